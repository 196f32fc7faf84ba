// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A plan as a person leaves it standing: lines that were drawn in to a pull are tied off at the
 * length they have then, and the tree's own weight, under which its wood crept long ago, is left
 * out.
 */
final class TiedOff {
  private TiedOff() {}

  /** True if some line was given by its pull. */
  static boolean changes(TrialResult full) {
    return full.held().contains("tension");
  }

  /**
   * The request for a course.
   *
   * @param full what came of the plan, whole and at once
   * @param options how to solve
   */
  static TrialRequest of(TrialRequest request, TrialResult full, RodOptions options) {
    Map<String, LineTrial> found =
        full.lines().stream().collect(Collectors.toMap(LineTrial::id, line -> line));
    List<Proposal> tried = request.proposals().stream().map(one -> tied(one, found)).toList();
    Plan standing = new PlanDraft(request.plan()).proposals(tried).selfWeight(false).build();
    return new TrialRequest(request.tree(), standing, tried, request.species(), options);
  }

  private static Proposal tied(Proposal proposal, Map<String, LineTrial> found) {
    return proposal.withLines(line -> tied(line, found));
  }

  private static GuyLine tied(GuyLine line, Map<String, LineTrial> found) {
    LineTrial trial = found.get(line.id());
    boolean drawn = trial != null && trial.shortening() > 0;
    return drawn && line.hold() instanceof Hold.Tension
        ? line.with(line.at(), line.anchor(), new Hold.Shortening(trial.shortening()))
        : line;
  }
}
