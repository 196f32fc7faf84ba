// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Works out what the coils of a request hold. */
final class CoilHolding {
  /** A hundredth of a millimetre on a branch is enough here, and ten times as fast. */
  static final RodOptions ROUGH =
      new RodOptions(RodOptions.Route.FOLLOWED, 1e-4, 3e-3, 1e-2, 4, RodOptions.Doubt.QUICK);

  /** A movement below this is none [m]. */
  private static final double NOTHING = 1e-5;

  private final TrialRequest request;
  private final Skeleton skeleton;
  private final HeldTree forced;

  CoilHolding(TrialRequest request) {
    this.request =
        new TrialRequest(
            request.tree(), request.plan(), request.proposals(), request.species(), ROUGH);
    skeleton = new Skeleton(request.tree());
    boolean coiled = request.proposals().stream().anyMatch(one -> !one.coils().isEmpty());
    forced = coiled ? HeldTree.of(this.request, HeldTree.Grip.ALL) : null;
  }

  List<CoilHold> all() {
    if (forced == null || !forced.holds()) {
      return List.of();
    }
    HeldTree held = forced.then(0, HeldTree.Grip.HELD);
    if (!held.holds()) {
      return List.of();
    }
    HeldTree free = forced.then(0, HeldTree.Grip.NOTHING);
    CoilDoubt doubt = new CoilDoubt(request, skeleton);
    Optional<Way> worst = way(doubt.least());
    Optional<Way> best = way(doubt.most());
    Way middle = new Way(forced, held);
    List<CoilHold> out = new ArrayList<>();
    for (Proposal proposal : request.proposals()) {
      if (proposal.coils().isEmpty() || CoilWays.of(skeleton, proposal).isEmpty()) {
        continue;
      }
      int end = furthest(proposal);
      if (moved(forced, end) > NOTHING) {
        double kept = middle.kept(end);
        double one = worst.map(way -> way.kept(end)).orElse(kept);
        double other = best.map(way -> way.kept(end)).orElse(kept);
        double low = Math.min(kept, Math.min(one, other));
        Range band = new Range(low, kept, Math.max(kept, Math.max(one, other)));
        double freed = free.holds() ? moved(free, end) : moved(held, end);
        out.add(hold(proposal, end, new Ends(moved(held, end), freed, band)));
      }
    }
    return out;
  }

  private record Ends(double held, double unwired, Range kept) {}

  private CoilHold hold(Proposal proposal, int end, Ends ends) {
    double front = request.plan().frontAzimuth().orElse(0);
    List<CoilPath> coils = CoilWays.of(skeleton, proposal);
    return new CoilHold(
        proposal.id(),
        skeleton.segment(end).id(),
        moved(forced, end),
        ends.held,
        ends.unwired,
        ends.kept,
        new CoilStrength(forced).of(coils),
        CoilOverbend.pulls(request, forced, proposal, 1),
        new CoilOverbend(request, proposal).found(forced),
        coils.stream().map(path -> CoilWork.of(path, forced, front)).toList());
  }

  /** Bent, and let go by the hands. */
  private record Way(HeldTree forced, HeldTree held) {
    /** Part of the movement of a segment's end that stays, along that movement. */
    double kept(int end) {
      Timber timber = forced.rods().timber();
      Point3 rest = timber.skeleton().point(end, timber.end(end) / timber.skeleton().length(end));
      Vector3 there = forced.point(end, timber.end(end)).minus(rest);
      Vector3 stays = held.point(end, timber.end(end)).minus(rest);
      return there.dot(stays) / there.dot(there);
    }
  }

  private Optional<Way> way(Windings.Made made) {
    HeldTree bent = HeldTree.of(request, HeldTree.Grip.ALL, made);
    if (!bent.holds()) {
      return Optional.empty();
    }
    HeldTree held = bent.then(0, HeldTree.Grip.HELD);
    return held.holds() ? Optional.of(new Way(bent, held)) : Optional.empty();
  }

  /** The segment of a proposal whose end moves most when bent. */
  private int furthest(Proposal proposal) {
    Set<Integer> touched = new TreeSet<>();
    for (CoilPath path : CoilWays.of(skeleton, proposal)) {
      path.stretches().forEach(stretch -> touched.add(stretch.segment()));
    }
    for (HandBend hand : proposal.handBends()) {
      touched.add(skeleton.indexOf(hand.at().segment()));
    }
    int best = touched.iterator().next();
    for (int i : touched) {
      best = moved(forced, i) > moved(forced, best) ? i : best;
    }
    return best;
  }

  /** How far the end of what is left of a segment has moved [m]. */
  private double moved(HeldTree tree, int i) {
    double end = tree.rods().timber().end(i);
    return tree.point(i, end).distance(skeleton.point(i, end / skeleton.length(i)));
  }
}
