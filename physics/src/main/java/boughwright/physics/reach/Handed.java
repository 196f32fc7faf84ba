// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.trial.RiskGuess;
import boughwright.physics.trial.TrialResult;
import java.util.Objects;
import java.util.Optional;

/**
 * What a hand does that holds a place itself, with no line.
 *
 * @param target where the hand is [m, tree frame as measured]
 * @param comesTo where the place comes [m, tree frame as measured]
 * @param miss how far that is from where the hand wants it [m]
 * @param force what the hand has to pull [N, tree frame]
 * @param proposal the pull by hand as a proposal, nothing holding it yet; empty where the hand
 *     hardly moves it
 * @param plan the plan with what is kept and the pull
 * @param trial what the wood does
 * @param risk what that risks, guessed
 * @param stays whether the pose is that of an earlier target, because there is none for this one
 */
public record Handed(
    Point3 target,
    Point3 comesTo,
    double miss,
    Vector3 force,
    Optional<Proposal> proposal,
    Plan plan,
    TrialResult trial,
    RiskGuess risk,
    boolean stays) {
  public Handed {
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(comesTo, "comesTo");
    Objects.requireNonNull(force, "force");
    Objects.requireNonNull(proposal, "proposal");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(risk, "risk");
  }

  /** The same pose for another target that has none of its own. */
  Handed staying(Point3 other) {
    return new Handed(
        other, comesTo, comesTo.distance(other), force, proposal, plan, trial, risk, true);
  }
}
