// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.trial.RiskGuess;
import boughwright.physics.trial.TrialResult;
import java.util.List;

/**
 * One way to bring the target nearer, ready for a plan.
 *
 * @param why what it has over the others
 * @param ties its lines
 * @param proposal the same as a proposal
 * @param plan the plan it was tried in, with what was kept
 * @param trial what the wood does
 * @param risk what that risks, guessed
 * @param comesTo where the place comes [m, tree frame as measured]
 * @param heads which way the axis runs there then
 * @param miss how far the target still is [m]
 * @param nearest how near these lines could bring it whatever the risk [m]
 * @param angles of each line, the angle to the axis of the branch where it holds [rad]
 */
public record Choice(
    Why why,
    List<Tie> ties,
    Proposal proposal,
    Plan plan,
    TrialResult trial,
    RiskGuess risk,
    Point3 comesTo,
    Direction3 heads,
    double miss,
    double nearest,
    List<Double> angles) {

  /** What a choice has over the others. */
  public enum Why {
    NEAREST,
    LEAST_RISK,
    LEAST_PULL,
    ONE_LINE,
    ANOTHER_WAY
  }

  public Choice {
    ties = List.copyOf(ties);
    angles = List.copyOf(angles);
  }

  /** Whether the lines are eased because of the risk allowed, and by how much it shows [m]. */
  public boolean isEased() {
    return miss > nearest + LineLimits.LEAST_SHORTENING;
  }

  /** Whether friction alone does not hold the pad of one of its lines. */
  public boolean mustStopPad(int line) {
    return angles.get(line) < LineLimits.holdsFrom();
  }
}
