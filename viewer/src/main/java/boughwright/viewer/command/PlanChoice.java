// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.NearNames;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A plan of a document and the proposals of it to try.
 *
 * @param plan the plan
 * @param proposals proposals of that plan, in its order
 */
record PlanChoice(Plan plan, List<Proposal> proposals) {
  PlanChoice {
    proposals = List.copyOf(proposals);
  }

  /** A plan with all its proposals. */
  static PlanChoice whole(Plan plan) {
    return new PlanChoice(plan, plan.proposals());
  }

  /**
   * The one plan of a document with an id.
   *
   * @throws InputException if there is none, with the plans there are
   */
  static Plan named(Document document, String id) throws InputException {
    return named(document, id, "--plan");
  }

  /**
   * The same, named with an option.
   *
   * @throws InputException if there is none, with the plans there are
   */
  static Plan named(Document document, String id, String option) throws InputException {
    List<String> known = document.plans().stream().map(Plan::id).toList();
    Optional<Plan> plan = document.plan(id);
    if (plan.isPresent()) {
      return plan.get();
    }
    throw refused(
        option,
        "unknown-plan",
        known.isEmpty()
            ? "the file has no plans"
            : "there is no plan " + UsageFaults.quoted(id) + " in the file",
        known.isEmpty()
            ? "Leave " + option + " out, or add a plan to the file"
            : choose(id, known));
  }

  /**
   * The plans to try.
   *
   * @param document where they are
   * @param plan the id the person gave; empty for every plan of the file
   * @param proposals ids the person gave, separated by commas; empty for all of a plan
   * @throws InputException if a plan or a proposal is not there, or it is not clear of which plan a
   *     proposal is
   */
  static List<PlanChoice> of(Document document, Optional<String> plan, List<String> proposals)
      throws InputException {
    List<Plan> plans = plan.isPresent() ? List.of(named(document, plan.get())) : document.plans();
    if (plans.isEmpty()) {
      throw refused(
          "--plan",
          "no-plans",
          "the file has no plans, so there is nothing to try",
          "Add a plan with a proposal to the file");
    }
    if (proposals.isEmpty()) {
      return plans.stream().map(PlanChoice::whole).toList();
    }
    if (plans.size() > 1) {
      throw refused(
          "--proposal",
          "which-plan",
          "the file has " + plans.size() + " plans",
          "Say which one with --plan: " + listed(plans.stream().map(Plan::id).toList()));
    }
    return List.of(some(plans.get(0), proposals));
  }

  private static PlanChoice some(Plan plan, List<String> typed) throws InputException {
    List<String> known = plan.proposals().stream().map(Proposal::id).toList();
    List<String> wanted = new ArrayList<>();
    for (String text : typed) {
      wanted.addAll(
          known.contains(text)
              ? List.of(text)
              : Arrays.stream(text.split(",", -1)).map(String::strip).toList());
    }
    List<Problem> problems = new ArrayList<>();
    for (String id : wanted) {
      if (!known.contains(id)) {
        problems.add(
            Problem.fault(
                Place.of("--proposal"),
                "unknown-proposal",
                "plan "
                    + UsageFaults.quoted(plan.id())
                    + " has no proposal "
                    + UsageFaults.quoted(id),
                known.isEmpty() ? "It has none at all" : choose(id, known)));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return new PlanChoice(
        plan, plan.proposals().stream().filter(p -> wanted.contains(p.id())).toList());
  }

  private static String choose(String typed, List<String> known) {
    List<String> near = NearNames.of(typed, known);
    return known.size() > 1 && near.size() == 1
        ? "Did you mean " + listed(near) + "? There are: " + listed(known)
        : "There " + (known.size() == 1 ? "is " : "are: ") + listed(known);
  }

  private static String listed(List<String> ids) {
    return ids.stream().map(UsageFaults::quoted).collect(Collectors.joining(", "));
  }

  private static InputException refused(String where, String kind, String found, String remedy) {
    return new InputException(Problem.fault(Place.of(where), kind, found, remedy));
  }
}
