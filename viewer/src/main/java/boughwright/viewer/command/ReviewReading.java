// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.Limit;
import boughwright.modeller.design.review.ReviewRules;
import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.NearNames;
import boughwright.physics.grow.CutBearing;
import boughwright.physics.trial.TrialSpecies;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads by what a tree is reviewed; notes a fault for each thing amiss. */
final class ReviewReading {
  private final ReviewOptions options;
  private final Faults faults;
  private final OptionValues values;

  ReviewReading(ReviewOptions options, Faults faults) {
    this.options = options;
    this.faults = faults;
    values = new OptionValues(faults);
  }

  /**
   * What is judged.
   *
   * @param plan front, planting angle, cuts and apex; empty where nothing is said of them
   * @param isNamed whether the plan is one of the file
   */
  record Seen(Optional<Plan> plan, boolean isNamed) {}

  /** The plan a person named, with the front they gave. */
  Optional<Seen> seen(Document document) {
    Optional<Plan> plan =
        options.plan == null
            ? Optional.empty()
            : faults.tryTo(() -> PlanChoice.named(document, options.plan));
    OptionalDouble front = front();
    if (front.isEmpty()) {
      return Optional.of(new Seen(plan, plan.isPresent()));
    }
    return faults.tryTo(
        () -> new Seen(Optional.of(turned(document, plan, front)), plan.isPresent()));
  }

  private OptionalDouble front() {
    if (options.front == null) {
      return OptionalDouble.empty();
    }
    OptionValues.Range range =
        new OptionValues.Range("--front-deg", -360, 360, "an azimuth in degrees, such as 20");
    OptionalDouble degrees = values.number(options.front, range);
    return degrees.isEmpty() ? degrees : OptionalDouble.of(Math.toRadians(degrees.getAsDouble()));
  }

  private static Plan turned(Document document, Optional<Plan> plan, OptionalDouble front)
      throws InputException {
    String id = plan.map(Plan::id).orElseGet(() -> PlanEdits.nextId(document));
    Document with =
        plan.isPresent() ? document : PlanEdits.add(new PlanDraft(id).build()).of(document);
    return PlanEdits.front(id, front).of(with).plan(id).orElseThrow();
  }

  /** The rules for a tree. */
  ReviewRules rules(Document document) {
    ReviewRules rules =
        ReviewRules.of(
            options
                .style
                .read(document.fronts().wishes().style(), faults)
                .orElse(TreeStyle.UPRIGHT),
            CutBearing.of(TrialSpecies.of(document.tree())));
    if (options.limits != null) {
      for (String one : options.limits.split(",", -1)) {
        rules = with(rules, one.strip());
      }
    }
    return rules;
  }

  private ReviewRules with(ReviewRules rules, String text) {
    String[] parts = text.split("=", -1);
    String name = parts[0].strip().toLowerCase(Locale.ROOT);
    if (parts.length != 2) {
      faults.add(
          "--limits",
          "no-limit",
          UsageFaults.quoted(text) + " is no limit with its value",
          "Write it as branch-caliper=0.6");
      return rules;
    }
    Optional<Limit> limit = LimitNames.named(name);
    if (limit.isEmpty()) {
      List<String> near = NearNames.of(name, LimitNames.all());
      faults.add(
          "--limits",
          "unknown-limit",
          "there is no limit " + UsageFaults.quoted(name),
          near.isEmpty()
              ? "docs/user/review.md lists them"
              : "Did you mean " + String.join(" or ", near) + "?");
      return rules;
    }
    double most = LimitNames.shown(limit.get(), limit.get().largest());
    OptionValues.Range range =
        new OptionValues.Range("--limits " + name, 1e-6, most, "a number above 0, such as 0.6");
    OptionalDouble value = values.number(parts[1].strip(), range);
    return value.isPresent()
        ? rules.with(limit.get(), LimitNames.si(limit.get(), value.getAsDouble()))
        : rules;
  }
}
