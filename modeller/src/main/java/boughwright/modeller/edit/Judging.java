// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanRules;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Turns the faults that the rules of tree and plan find into a refusal. */
final class Judging {
  /** Remedies for who changes a tree by hand, where the rule's own speaks of fields of the file. */
  private static final Map<String, String> BY_HAND =
      Map.of(
          "no-wood",
          "Give it a thinner bark or a larger caliper",
          "anchor-in-wood",
          "Move the anchor out of the wood, or tie the line to the tree",
          "coil-no-path",
          "Start and end the coil along one branch, from the trunk outward",
          "slot-twice",
          "Take the slot of the segment out, or leave this one out",
          "no-length",
          "Move its end away from its start, or delete it");

  private Judging() {}

  /**
   * Refuses what has a fault.
   *
   * @param where what was judged, such as {@code plan "a"}; may be empty
   */
  static void require(String where, List<Finding> findings) throws InputException {
    List<Problem> problems =
        findings.stream().filter(Finding::isFault).map(one -> problem(where, one)).toList();
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** Refuses a plan that does not fit a tree. */
  static void require(Skeleton skeleton, Plan plan) throws InputException {
    require("plan " + Refusal.quoted(plan.id()), PlanRules.findings(skeleton, plan));
  }

  private static Problem problem(String where, Finding finding) {
    String subjects =
        finding.subjects().stream().limit(1).map(Refusal::quoted).collect(Collectors.joining());
    return Refusal.problem(
        (where + " " + subjects).strip(),
        finding.kind(),
        finding.found(),
        BY_HAND.getOrDefault(finding.kind(), finding.remedy()));
  }
}
