// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Tackle;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Ties the line of a grab and looks what comes of it; may be asked from any thread. */
final class Pull {
  private final Grab grab;
  private final TreeStand stand;
  private final Naming naming;
  private final List<Proposal> kept;
  private final Point3 free;

  Pull(Grab grab, TreeStand stand) {
    this.grab = grab;
    this.stand = stand;
    kept = grab.kept();
    naming = Naming.besides(kept).numbered();
    free = stand.with(kept).point(grab.spot());
  }

  private Pull(Pull other, TreeStand stand) {
    grab = other.grab;
    this.stand = stand;
    naming = other.naming;
    kept = other.kept;
    free = other.free;
  }

  /** The same, solved otherwise. */
  Pull with(RodOptions options) {
    return new Pull(this, stand.with(options));
  }

  Grab grab() {
    return grab;
  }

  TreeStand stand() {
    return stand;
  }

  /** Where the grabbed place is with nothing but what is kept [m, tree frame]. */
  Point3 free() {
    return free;
  }

  /** The line between two places, held in a way. */
  GuyLine line(TiePlace place, AnchorPlace anchor, Hold hold) {
    if (grab.line().isPresent()) {
      GuyLine changed = grab.line().get();
      Tackle tackle = changed.tackle();
      boolean same = changed.anchor().equals(anchor.anchor());
      Tackle kept =
          new Tackle(
              tackle.strand(),
              tackle.tightener(),
              tackle.padLength(),
              tackle.lever(),
              same ? tackle.anchorKind() : anchor.kind());
      return new GuyLine(
          changed.id(),
          changed.at(),
          changed.padRound(),
          anchor.anchor(),
          hold,
          kept,
          changed.extras());
    }
    return new GuyLine(
        naming.line(0),
        place.spot(),
        OptionalDouble.empty(),
        anchor.anchor(),
        hold,
        new Tackle(Optional.empty(), Optional.empty(), OptionalDouble.empty(), 0, anchor.kind()),
        Map.of());
  }

  /** A line as a proposal of its own. */
  Proposal proposal(GuyLine line) {
    return new Proposal(
        naming.proposal(),
        Optional.of(line.at().segment()),
        List.of(line),
        List.of(),
        List.of(),
        Map.of());
  }

  /** An id for a pull by hand that no other has. */
  String handId() {
    return naming.hand();
  }

  /** An id for a proposal that no other has. */
  String proposalId() {
    return naming.proposal();
  }

  /** A proposal with those that are kept. */
  List<Proposal> with(Proposal proposal) {
    List<Proposal> all = new ArrayList<>(kept);
    all.add(proposal);
    return all;
  }

  /** The plan with what is kept and a proposal. */
  Plan plan(Proposal proposal) {
    return grab.plan().withProposals(with(proposal));
  }

  TreeStand.Stood tied(GuyLine line) {
    return stand.with(with(proposal(line)));
  }

  /** Which of all lines the new one is. */
  int index() {
    return kept.stream().mapToInt(one -> one.guyLines().size()).sum();
  }

  /** Distance between the two ends of a line as measured, on the axes [m]. */
  double restLength(Spot spot, AnchorPlace anchor) {
    return stand
        .skeleton()
        .point(stand.skeleton().indexOf(spot.segment()), spot.along())
        .distance(anchor.at());
  }

  /** A place a line is tied to, by name. */
  static AnchorPlace placeOf(TreeStand stand, GuyLine line) {
    if (line.anchor() instanceof Anchor.OnTree tree) {
      int i = stand.skeleton().indexOf(tree.spot().segment());
      return new AnchorPlace(
          AnchorSort.BRANCH,
          tree.spot().segment(),
          tree,
          stand.skeleton().point(i, tree.spot().along()),
          Optional.empty());
    }
    Anchor.Fixed fixed = (Anchor.Fixed) line.anchor();
    return new AnchorPlace(
        AnchorSort.POINT, "point", fixed, fixed.point(), line.tackle().anchorKind());
  }
}
