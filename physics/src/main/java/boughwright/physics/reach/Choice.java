// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.trial.CoilWork;
import boughwright.physics.trial.RiskGuess;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Optional;

/**
 * One way to bring the target nearer, ready for a plan.
 *
 * @param why what it has over the others
 * @param lines its lines
 * @param proposal the same as a proposal
 * @param plan the plan it was tried in, with what was kept
 * @param trial what the wood does; with a coil at the end of the pull by hand
 * @param risk what that risks, guessed
 * @param comesTo where the place comes, with a coil to rest [m, tree frame as measured]
 * @param heads which way the axis runs there then
 * @param bend the coil and the pull by hand, if wire is coiled
 * @param miss how far the target still is [m]
 * @param nearest how near these lines could bring it whatever the risk [m]
 */
public record Choice(
    Why why,
    List<Line> lines,
    Proposal proposal,
    Plan plan,
    TrialResult trial,
    RiskGuess risk,
    Point3 comesTo,
    Direction3 heads,
    Optional<Bend> bend,
    double miss,
    double nearest) {

  /** What a choice has over the others. */
  public enum Why {
    NEAREST,
    LEAST_RISK,
    LEAST_PULL,
    ONE_LINE,
    COIL,
    COIL_AND_LINE,
    ANOTHER_WAY
  }

  /**
   * One of its lines.
   *
   * @param tie where it holds, what it is tied to, how far it is drawn in
   * @param angle its angle to the axis of the branch where it holds, in the bent pose [rad]
   * @param padSide the side of the branch, as measured, that its pad lies on: away from the anchor;
   *     {@code top}, {@code underside}, {@code left}, {@code right}, {@code front} or {@code back},
   *     seen from the front
   */
  public record Line(Tie tie, double angle, String padSide) {
    /** Whether friction alone does not hold its pad where it is. */
    public boolean mustStopPad() {
      return angle < LineLimits.holdsFrom();
    }
  }

  /**
   * A coil that holds what a hand bends.
   *
   * @param hand what the hand does, to be let go then
   * @param force its force at the end [N]
   * @param place where it takes hold
   * @param coil the coil
   * @param work how the coil is wound
   * @param held the pose that coil and lines hold once the hand lets go
   */
  public record Bend(
      HandBend hand, double force, TiePlace place, Coil coil, CoilWork work, TrialResult held) {
    Winding winding() {
      return new Winding(place, hand.direction().times(hand.move()), coil);
    }
  }

  public Choice {
    lines = List.copyOf(lines);
  }

  /** Whether the lines are eased because of the risk allowed, and by how much it shows [m]. */
  public boolean isEased() {
    return miss > nearest + LineLimits.LEAST_SHORTENING;
  }
}
