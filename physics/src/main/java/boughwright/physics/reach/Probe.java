// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Tackle;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.TreeStand;
import boughwright.physics.trial.TrialRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Tries lines and forces, and says how far from the target they leave it. */
final class Probe {
  private final TreeStand stand;
  private final Target target;
  private final List<Proposal> kept;
  private final Naming naming;
  private final BooleanSupplier stop;

  /**
   * A probe.
   *
   * @param stand the tree
   * @param kept proposals that act in every trial
   */
  Probe(TreeStand stand, Target target, List<Proposal> kept) {
    this(stand, target, kept, () -> false);
  }

  /**
   * A probe that can be stopped.
   *
   * @param stop asked before each trial, from any thread; true ends it with a {@link
   *     CancellationException}
   */
  Probe(TreeStand stand, Target target, List<Proposal> kept, BooleanSupplier stop) {
    this.stand = stand;
    this.target = target;
    this.kept = List.copyOf(kept);
    this.stop = stop;
    naming = Naming.besides(kept);
  }

  TreeStand stand() {
    return stand;
  }

  Target target() {
    return target;
  }

  /** The same probe, solved otherwise. */
  Probe with(TreeStand other) {
    return new Probe(other, target, kept, stop);
  }

  /** Where things are without any line but those kept; empty where no pose holds. */
  Optional<Tried> alone() {
    goOn();
    return of(List.of(), stand.with(kept));
  }

  /** What some lines bring; empty where no pose holds. */
  Optional<Tried> tie(List<Tie> ties) {
    goOn();
    return of(ties, stand.with(with(proposal(ties))));
  }

  /** What some lines and a force that keeps its direction bring; empty where no pose holds. */
  Optional<Tried> pull(List<Tie> ties, Spot at, Vector3 force) {
    goOn();
    List<Proposal> acting = ties.isEmpty() ? kept : with(proposal(ties));
    return of(ties, stand.pulled(acting, at, force));
  }

  private void goOn() {
    if (stop.getAsBoolean()) {
      throw new CancellationException("the search was stopped");
    }
  }

  private Optional<Tried> of(List<Tie> ties, TreeStand.Stood stood) {
    if (!stood.holds()) {
      return Optional.empty();
    }
    Point3 place = stood.point(target.spot());
    double[] missing = target.missing(place, stood.direction(target.spot()));
    return Optional.of(
        new Tried(ties, stood, missing, target.miss(place, stood.direction(target.spot()))));
  }

  private List<Proposal> with(Proposal proposal) {
    List<Proposal> all = new ArrayList<>(kept);
    all.add(proposal);
    return all;
  }

  /** Lines, a coil and the pull by hand that bends it, as a proposal for a plan. */
  Proposal proposal(List<Tie> ties, Winding winding) {
    return proposal(ties)
        .withCoils(List.of(winding.coil()))
        .withHandBends(List.of(winding.hand(naming.hand())));
  }

  /** A force that takes hold and is let go, with what holds then; empty where no pose holds. */
  Optional<Held> held(ReachRequest request, List<Tie> ties, Winding winding) {
    Held.Asked asked = asked(request, ties, winding);
    HeldTree forced = HeldTree.of(asked.trial(), HeldTree.Grip.ALL);
    if (!forced.holds()) {
      return Optional.empty();
    }
    HeldTree held = forced.gripped(HeldTree.Grip.HELD);
    if (!held.holds()) {
      return Optional.empty();
    }
    Point3 place = held.point(target.spot());
    Direction3 heads = held.direction(target.spot());
    return Optional.of(
        new Held(
            asked.proposal(),
            asked.trial(),
            forced,
            held,
            target.missing(place, heads),
            target.miss(place, heads)));
  }

  /** How far the target is once a bend is let go and its coil is taken off at once [m]. */
  OptionalDouble unwired(ReachRequest request, Winding winding) {
    HeldTree forced = HeldTree.of(asked(request, List.of(), winding).trial(), HeldTree.Grip.ALL);
    if (!forced.holds()) {
      return OptionalDouble.empty();
    }
    HeldTree free = forced.gripped(HeldTree.Grip.NOTHING);
    return free.holds()
        ? OptionalDouble.of(target.miss(free.point(target.spot()), free.direction(target.spot())))
        : OptionalDouble.empty();
  }

  /** Lines, a coil and a pull by hand, ready to be tried. */
  Held.Asked asked(ReachRequest request, List<Tie> ties, Winding winding) {
    Proposal proposal = proposal(ties, winding);
    List<Proposal> all = with(proposal);
    return new Held.Asked(
        proposal,
        new TrialRequest(
            request.tree(),
            request.plan().withProposals(all),
            all,
            request.species(),
            stand.options()));
  }

  /** What some lines bring while a hand bends; empty where no pose holds. */
  Optional<TreeStand.Stood> forced(List<Tie> ties, Winding winding) {
    return Optional.of(stand.with(with(proposal(ties, winding)))).filter(TreeStand.Stood::holds);
  }

  /** Pulls by hand of the proposals that are kept. */
  int handsKept() {
    return kept.stream().mapToInt(proposal -> proposal.handBends().size()).sum();
  }

  /** Pull of one of the lines that were tried [N]. */
  double tension(Tried tried, int tie) {
    int before = kept.stream().mapToInt(proposal -> proposal.guyLines().size()).sum();
    return tried.stood().tension(before + tie);
  }

  /** Lines as a proposal for a plan. */
  Proposal proposal(List<Tie> ties) {
    List<GuyLine> lines = new ArrayList<>();
    for (Tie tie : ties) {
      lines.add(
          new GuyLine(
              naming.line(lines.size()),
              tie.place().spot(),
              OptionalDouble.empty(),
              tie.anchor().anchor(),
              new Hold.Shortening(tie.shortening()),
              new Tackle(
                  Optional.empty(),
                  Optional.empty(),
                  OptionalDouble.empty(),
                  0,
                  tie.anchor().kind()),
              Map.of()));
    }
    return new Proposal(
        naming.proposal(),
        Optional.of(target.spot().segment()),
        lines,
        List.of(),
        List.of(),
        Map.of());
  }

  /** Distance between the two ends of a line as measured [m]. */
  double restLength(TiePlace place, AnchorPlace anchor) {
    Skeleton skeleton = stand.skeleton();
    return skeleton
        .point(skeleton.indexOf(place.spot().segment()), place.spot().along())
        .distance(anchor.at());
  }

  /** Where an anchor is in a pose [m, tree frame]. */
  static Point3 anchorIn(TreeStand.Stood stood, AnchorPlace anchor) {
    return anchor.anchor() instanceof Anchor.OnTree tree ? stood.point(tree.spot()) : anchor.at();
  }
}
