// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.hold.StrandTwist;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.RiskGuess;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a line does for a hand that pulls.
 *
 * @param target where the hand is [m, tree frame as measured]
 * @param comesTo where the grabbed place comes [m, tree frame as measured]
 * @param miss how far that is from the hand [m]
 * @param line the line that does it; empty where none leads that way
 * @param proposal the line as a proposal; empty without a line
 * @param plan the plan with what is kept and the line
 * @param trial what the wood does
 * @param risk what that risks, guessed
 * @param others what other anchors would do, the best first
 * @param missing an anchor that is not there and would bring the place much nearer
 * @param stays whether the pose is that of an earlier target, because there is none for this one
 * @param why what is wrong, where something is
 */
public record Pulled(
    Point3 target,
    Point3 comesTo,
    double miss,
    Optional<Line> line,
    Optional<Proposal> proposal,
    Plan plan,
    TrialResult trial,
    RiskGuess risk,
    List<Other> others,
    Optional<Reached.MissingAnchor> missing,
    boolean stays,
    Optional<Unreachable> why) {

  /** Gauge of the double cord that turns are told for where no tackle is said [m]. */
  public static final double USUAL_CORD = 0.002;

  /** What is assumed of a line whose tackle nobody gave, for turns. */
  public static final String ASSUMED_TACKLE =
      "double cord of 2 mm, twisted by a stick in its middle, tied straight as measured";

  /**
   * The line.
   *
   * @param tie where it holds, what it is tied to, how far it is drawn in
   * @param at its pull and length
   * @param angle its angle to the axis of the branch where it holds, in the bent pose [rad]
   * @param blocked whether wood stands in its way
   */
  public record Line(Tie tie, LineTrial at, double angle, boolean blocked) {
    /** Whether friction alone does not hold its pad where it is. */
    public boolean mustStopPad() {
      return angle < LineLimits.holdsFrom();
    }
  }

  /**
   * Turns of the tackle that is assumed.
   *
   * @param turns that draw a line in so far [1]
   * @param most turns before its strands lie against each other [1]
   */
  public record Turns(double turns, double most) {}

  /** Turns of the tackle of {@link #ASSUMED_TACKLE} for a line of which nobody gave any. */
  public static Turns turns(LineTrial line) {
    StrandTwist twist =
        StrandTwist.spanning(line.length() + line.shortening(), USUAL_CORD, 0, true);
    return new Turns(twist.turns(line.length()), twist.turnsTouching());
  }

  /**
   * Another anchor, as far as it is known already.
   *
   * @param anchor the anchor
   * @param miss how far the grabbed place would stay from the hand [m]
   * @param breaking what it would risk, guessed [1]
   */
  public record Other(AnchorPlace anchor, double miss, double breaking) {}

  public Pulled {
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(comesTo, "comesTo");
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(proposal, "proposal");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(risk, "risk");
    others = List.copyOf(others);
    Objects.requireNonNull(missing, "missing");
    Objects.requireNonNull(why, "why");
  }

  /** The same pose for another target that has none of its own. */
  Pulled staying(Point3 other, Unreachable reason) {
    return with(other, Optional.empty(), true, Optional.of(reason));
  }

  /** The same, and an anchor that would do better. */
  Pulled missing(Reached.MissingAnchor anchor) {
    return with(target, Optional.of(anchor), stays, why);
  }

  private Pulled with(
      Point3 other,
      Optional<Reached.MissingAnchor> anchor,
      boolean earlier,
      Optional<Unreachable> reason) {
    return new Pulled(
        other,
        comesTo,
        comesTo.distance(other),
        line,
        proposal,
        plan,
        trial,
        risk,
        others,
        anchor,
        earlier,
        reason);
  }
}
