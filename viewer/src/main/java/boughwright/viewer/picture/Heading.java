// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.TreeWood;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.Verdict;
import boughwright.viewer.scene.VerdictWords;
import boughwright.viewer.scene.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * What stands over a picture.
 *
 * @param name name of the tree
 * @param about plan, proposals, planting angle, wood and day
 * @param verdict the answer in words; empty without one
 * @param reason why; empty without a verdict
 * @param change the first thing that would change it; empty without one
 */
record Heading(String name, String about, String verdict, String reason, String change) {

  static Heading of(Document document, Optional<Plan> plan, Optional<TrialResult> trial) {
    List<String> parts = new ArrayList<>();
    if (plan.isPresent()) {
      parts.add("plan " + VisibleText.of(plan.get().id()));
      parts.add(proposals(ids(plan.get(), trial)));
      plan.get().planting().filter(p -> p.tilt() != 0).map(Heading::planting).ifPresent(parts::add);
    } else {
      parts.add("as measured");
    }
    parts.add(wood(document.tree().wood()));
    document.tree().measuredOn().ifPresent(day -> parts.add("measured " + day));
    return new Heading(
        VisibleText.of(document.tree().name()),
        capital(parts),
        words(
            trial, verdict -> VerdictWords.line(verdict.level(), species(document.tree().wood()))),
        words(trial, Verdict::reason),
        words(trial, Verdict::firstChange));
  }

  /** Over a review: without proposals, for nothing is bent. */
  static Heading review(Document document, Optional<Plan> plan, String verdict) {
    List<String> parts = new ArrayList<>();
    parts.add(plan.map(p -> "plan " + VisibleText.of(p.id())).orElse("as measured"));
    plan.flatMap(Plan::planting)
        .filter(p -> p.tilt() != 0)
        .map(Heading::planting)
        .ifPresent(parts::add);
    parts.add(wood(document.tree().wood()));
    document.tree().measuredOn().ifPresent(day -> parts.add("measured " + day));
    return new Heading(VisibleText.of(document.tree().name()), capital(parts), verdict, "", "");
  }

  private static String capital(List<String> parts) {
    String about = String.join("  ·  ", parts);
    return about.substring(0, 1).toUpperCase(Locale.ROOT) + about.substring(1);
  }

  private static String words(Optional<TrialResult> trial, Function<Verdict, String> part) {
    return VisibleText.of(trial.flatMap(TrialResult::verdict).map(part).orElse(""));
  }

  private static List<String> ids(Plan plan, Optional<TrialResult> trial) {
    return trial
        .map(TrialResult::proposals)
        .orElseGet(() -> plan.proposals().stream().map(Proposal::id).toList());
  }

  private static String proposals(List<String> ids) {
    if (ids.isEmpty()) {
      return "no proposal";
    }
    String names = VisibleText.of(String.join(", ", ids));
    return (ids.size() == 1 ? "proposal " : "proposals ") + names;
  }

  private static String planting(Planting planting) {
    double degrees = Math.round(Math.toDegrees(planting.tilt()) * 10) / 10.0;
    String angle =
        degrees == Math.rint(degrees) ? String.valueOf((long) degrees) : String.valueOf(degrees);
    return "planting angle "
        + angle
        + "° toward azimuth "
        + Wording.azimuth(planting.towardAzimuth());
  }

  private static Optional<Species> species(TreeWood wood) {
    return wood instanceof TreeWood.OfSpecies named
        ? Optional.of(SpeciesTable.bundled().woodFor(named.key()))
        : Optional.empty();
  }

  private static String wood(TreeWood wood) {
    if (wood instanceof TreeWood.OfSpecies species) {
      return VisibleText.of(botanical(species.key()));
    }
    return VisibleText.of(((TreeWood.Own) wood).name());
  }

  /** The botanical name of a key such as {@code carpinus-betulus}; other words as they are. */
  private static String botanical(String key) {
    if (!key.matches("[a-z]+(-[a-z]+)+")) {
      return key;
    }
    return key.substring(0, 1).toUpperCase(Locale.ROOT) + key.substring(1).replace('-', ' ');
  }
}
