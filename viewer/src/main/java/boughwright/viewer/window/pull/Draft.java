// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.Handed;
import boughwright.physics.reach.Pulled;
import boughwright.physics.trial.RiskGuess;
import boughwright.physics.trial.TrialResult;
import java.util.Objects;
import java.util.Optional;

/**
 * What a hand has pulled and nobody has added to the plan yet.
 *
 * @param target where the hand is, or let go [m, tree frame as measured]
 * @param comesTo where the place comes [m, tree frame as measured]
 * @param miss how far that is from the hand [m]
 * @param proposal what would be added; empty where nothing is
 * @param plan the plan as it would be
 * @param trial what the wood does
 * @param risk what that risks, guessed
 * @param line the line, where one is pulled
 * @param force what the hand pulls, where it holds the place itself [N, tree frame]
 * @param coil the coil that holds it, once one is found
 * @param settled whether the hand has let go, and the pose is solved with the usual accuracy
 * @param words what is wrong or missing, in a sentence; empty for nothing
 */
record Draft(
    Point3 target,
    Point3 comesTo,
    double miss,
    Optional<Proposal> proposal,
    Plan plan,
    TrialResult trial,
    RiskGuess risk,
    Optional<Pulled> line,
    Optional<Vector3> force,
    Optional<Choice> coil,
    boolean settled,
    String words) {
  Draft {
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(comesTo, "comesTo");
    Objects.requireNonNull(proposal, "proposal");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(risk, "risk");
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(force, "force");
    Objects.requireNonNull(coil, "coil");
    Objects.requireNonNull(words, "words");
  }

  static Draft of(Pulled pulled, boolean settled) {
    return new Draft(
        pulled.target(),
        pulled.comesTo(),
        pulled.miss(),
        pulled.proposal(),
        pulled.plan(),
        pulled.trial(),
        pulled.risk(),
        Optional.of(pulled),
        Optional.empty(),
        Optional.empty(),
        settled,
        PullWords.trouble(pulled));
  }

  static Draft of(Handed handed, boolean settled) {
    return new Draft(
        handed.target(),
        handed.comesTo(),
        handed.miss(),
        handed.proposal(),
        handed.plan(),
        handed.trial(),
        handed.risk(),
        Optional.empty(),
        Optional.of(handed.force()),
        Optional.empty(),
        settled,
        handed.stays() ? "The wood holds no pose there. The last one that holds is shown." : "");
  }

  /** A coil that holds it; the pose is that at the end of the pull by hand. */
  static Draft of(Point3 target, Choice coil) {
    return new Draft(
        target,
        coil.comesTo(),
        coil.miss(),
        Optional.of(coil.proposal()),
        coil.plan(),
        coil.trial(),
        coil.risk(),
        Optional.empty(),
        coil.bend().map(bend -> bend.hand().direction().times(bend.force())),
        Optional.of(coil),
        true,
        "");
  }

  /** The same, with more to say. */
  Draft saying(String other) {
    return new Draft(
        target, comesTo, miss, proposal, plan, trial, risk, line, force, coil, settled, other);
  }

  /** A bend by hand that no wire holds, and why. */
  Draft withoutWire(String why) {
    return new Draft(
        target,
        comesTo,
        miss,
        Optional.empty(),
        plan,
        trial,
        risk,
        line,
        force,
        coil,
        settled,
        why);
  }

  /** Whether it was bent by hand, and no wire was found that holds it. */
  boolean isWithoutWire() {
    return settled && force.isPresent() && coil.isEmpty() && proposal.isEmpty();
  }

  /** Whether it can be added to a plan: a line, or a bend by hand with the wire that holds it. */
  boolean isReady() {
    return settled && proposal.isPresent() && (force.isEmpty() || coil.isPresent());
  }

  /** The pose that is drawn: with a coil the one at rest, once the hand lets go. */
  TrialResult shown() {
    return coil.flatMap(Choice::bend).map(Choice.Bend::held).orElse(trial);
  }

  /** The line as it is drawn in, if one is there. */
  Optional<Pulled.Line> drawn() {
    return line.flatMap(Pulled::line);
  }
}
