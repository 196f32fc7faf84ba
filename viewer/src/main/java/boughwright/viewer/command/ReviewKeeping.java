// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Remedy;
import boughwright.modeller.design.review.Review;
import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.scene.FaultWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts cuts that a review proposes into a plan. */
final class ReviewKeeping {
  private static final int MOST = 10_000;

  private final ReviewOptions options;
  private final Faults faults;

  ReviewKeeping(ReviewOptions options, Faults faults) {
    this.options = options;
    this.faults = faults;
  }

  /** The numbers of faults whose cuts are kept; notes a fault for each thing amiss. */
  List<Integer> numbers(Optional<Document> document) {
    if (options.remove == null && options.addTo == null) {
      return List.of();
    }
    if (options.remove == null) {
      faults.add(
          "--add-to-plan", "nothing-done", "nothing is said to remove", "Add --remove 1, say");
      return List.of();
    }
    if (options.addTo == null) {
      faults.add("--remove", "nothing-done", "no plan takes the cuts", "Add --add-to-plan ID");
      return List.of();
    }
    if (document.isPresent() && !options.addTo.equals(options.plan)) {
      AddToPlan.requireNew(
          document.get(),
          options.addTo,
          Optional.of("--plan " + options.addTo + ", to judge and change that plan"),
          faults);
    }
    Set<Integer> numbers = new LinkedHashSet<>();
    for (String one : options.remove.split(",", -1)) {
      OptionValues.Range range =
          new OptionValues.Range("--remove", 1, MOST, "numbers of faults, such as 1,3");
      numbers.add((int) new OptionValues(faults).whole(one.strip(), range, 1));
    }
    return List.copyOf(numbers);
  }

  /**
   * The cuts of some faults.
   *
   * @throws InputException if there is no such fault, or nothing of it can be removed
   */
  List<Spot> cuts(Review review, List<Integer> numbers) throws InputException {
    List<Spot> cuts = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (int number : numbers) {
      if (number > review.faults().size()) {
        problems.add(
            refused(
                "no-such-fault",
                "there is no fault " + number + ": " + ReviewWords.count(review),
                "Give a number from the list"));
        continue;
      }
      Fault fault = review.faults().get(number - 1);
      Optional<Remedy> remedy =
          fault.options().stream().filter(one -> one.action() == Remedy.Action.REMOVE).findFirst();
      remedy.ifPresent(one -> cuts.addAll(one.cuts()));
      if (remedy.isEmpty()) {
        problems.add(
            refused(
                "nothing-to-remove",
                "fault "
                    + number
                    + " ("
                    + FaultWords.name(fault.kind())
                    + ") is not removed"
                    + " by a cut",
                "Look at what the answer says can be done about it"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return cuts;
  }

  private static Problem refused(String kind, String found, String remedy) {
    return Problem.fault(Place.of("--remove"), kind, found, remedy);
  }

  /**
   * The document with the cuts in the plan; empty where nothing is kept.
   *
   * @throws InputException if the plan does not fit the tree with them
   */
  Optional<Document> changed(Document document, ReviewReading.Seen seen, List<Spot> cuts)
      throws InputException {
    if (cuts.isEmpty()) {
      return Optional.empty();
    }
    String id = options.addTo;
    Document changed = document;
    if (document.plan(id).isEmpty()) {
      changed =
          seen.isNamed()
              ? PlanEdits.duplicate(seen.plan().orElseThrow().id(), id).of(document)
              : PlanEdits.add(new PlanDraft(id).build()).of(document);
      Optional<Plan> plan = seen.plan();
      if (plan.isPresent()) {
        changed = PlanEdits.front(id, plan.get().frontAzimuth()).of(changed);
      }
    }
    for (Spot cut : cuts) {
      List<Spot> made = changed.plan(id).orElseThrow().cuts();
      Cutting cutting = new Cutting(new Skeleton(document.tree()), made);
      if (!cutting.isGone(cutting.skeleton().indexOf(cut.segment()))) {
        changed = PlanEdits.addCut(id, cut).of(changed);
      }
    }
    return Optional.of(changed);
  }
}
