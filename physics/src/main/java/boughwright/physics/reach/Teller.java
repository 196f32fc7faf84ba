// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.CoilWork;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells choices: shortenings rounded to what a person can set, solved with the usual accuracy. */
final class Teller {
  /** Shortenings are told in tenths of a millimetre [1/m]. */
  private static final double PER_METRE = 10_000;

  private final ReachRequest request;
  private final TreeStand stand;
  private final Probe exact;

  /**
   * A teller.
   *
   * @param probe what the choices were found with
   */
  Teller(ReachRequest request, Probe probe) {
    this.request = request;
    stand = probe.stand();
    exact = probe.with(stand.with(RodOptions.DEFAULT));
  }

  /** A candidate as a choice; empty where the usual accuracy finds no pose after all. */
  Optional<Choice> told(Candidate one, Choice.Why why) {
    if (one.winding().isPresent()) {
      return wound(one, why);
    }
    return told(one.ties(), one.isEased())
        .map(tried -> choice(tried, why, one.isEased() ? one.nearest() : tried.miss()));
  }

  /** A choice with other shortenings. */
  Optional<Choice> eased(List<Tie> ties, Choice before) {
    return told(ties, true).map(tried -> choice(tried, before.why(), before.nearest()));
  }

  private Optional<Tried> told(List<Tie> ties, boolean down) {
    return exact.tie(ties.stream().map(tie -> tie.by(told(tie.shortening(), down))).toList());
  }

  /** Rounded, or rounded down so that the risk stays within what is allowed; never to nothing. */
  private static double told(double shortening, boolean down) {
    double steps = shortening * PER_METRE;
    return Math.max(1, down ? Math.floor(steps) : Math.rint(steps)) / PER_METRE;
  }

  /**
   * A candidate with a coil as a choice; empty where the usual accuracy finds no pose after all.
   */
  private Optional<Choice> wound(Candidate one, Choice.Why why) {
    List<Tie> ties =
        one.ties().stream().map(tie -> tie.by(told(tie.shortening(), one.isEased()))).toList();
    Winding winding = one.winding().orElseThrow();
    double far = told(winding.by().norm(), one.isEased());
    Winding rounded = winding.by(winding.by().direction().times(far));
    Optional<Held> held = exact.held(request, ties, rounded);
    Optional<Hand> tightens = held.flatMap(pose -> work(pose).tightens());
    if (tightens.isPresent() && tightens.get() != rounded.coil().hand()) {
      rounded = rounded.of(tightens.get());
      held = exact.held(request, ties, rounded);
    }
    Winding last = rounded;
    return held.flatMap(pose -> choice(new Wound(one, ties, last, pose), why));
  }

  private record Wound(Candidate of, List<Tie> ties, Winding winding, Held pose) {
    /** How near it comes whatever the risk [m]. */
    double nearest() {
      return of.isEased() ? of.nearest() : pose.miss();
    }
  }

  private CoilWork work(Held pose) {
    double front = request.plan().frontAzimuth().orElse(0);
    return CoilWork.of(pose.forced(), pose.proposal(), front).get(0);
  }

  private Optional<Choice> choice(Wound wound, Choice.Why why) {
    Held pose = wound.pose;
    return exact
        .forced(wound.ties, wound.winding)
        .map(
            forced ->
                new Choice(
                    why,
                    lines(new Tried(wound.ties, forced, pose.missing(), pose.miss())),
                    pose.proposal(),
                    pose.trial().plan(),
                    forced.result(),
                    forced.risk(),
                    pose.held().point(request.target().spot()),
                    pose.held().direction(request.target().spot()),
                    Optional.of(bend(wound)),
                    pose.miss(),
                    wound.nearest()));
  }

  private Choice.Bend bend(Wound wound) {
    return new Choice.Bend(
        wound.pose.proposal().handBends().get(0),
        wound.pose.forced().handForce(exact.handsKept()),
        wound.winding.place(),
        wound.winding.coil(),
        work(wound.pose),
        wound.pose.held().result());
  }

  private Choice choice(Tried tried, Choice.Why why, double nearest) {
    Proposal proposal = exact.proposal(tried.ties());
    List<Proposal> all = new ArrayList<>(request.kept());
    all.add(proposal);
    Plan plan = request.plan().withProposals(all);
    return new Choice(
        why,
        lines(tried),
        proposal,
        plan,
        tried.stood().result(),
        tried.stood().risk(),
        tried.stood().point(request.target().spot()),
        tried.stood().direction(request.target().spot()),
        Optional.empty(),
        tried.miss(),
        nearest);
  }

  private List<Choice.Line> lines(Tried tried) {
    return tried.ties().stream()
        .map(tie -> new Choice.Line(tie, SingleSearch.angle(tried, tie), padSide(tie)))
        .toList();
  }

  private String padSide(Tie tie) {
    Spot spot = tie.place().spot();
    int i = stand.skeleton().indexOf(spot.segment());
    Vector3 line = tie.anchor().at().minus(stand.skeleton().point(i, spot.along()));
    Vector3 axis = stand.skeleton().direction(i).vector();
    return stand.side(axis.times(line.dot(axis)).minus(line));
  }
}
