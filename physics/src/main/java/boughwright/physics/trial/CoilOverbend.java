// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far the hands of a proposal must go so that the branch comes to rest where the plan wants its
 * first hand: all hands of the proposal by one factor, the rest of the plan as it is.
 */
final class CoilOverbend {
  /** The rest is met within this part of the planned movement [1]. */
  private static final double CLOSE = 0.01;

  /** Farther than so many times the plan is another bend [1]. */
  private static final double MOST = 4;

  private static final int MOST_TRIES = 10;

  private final TrialRequest request;
  private final Proposal proposal;
  private final Skeleton skeleton;

  CoilOverbend(TrialRequest request, Proposal proposal) {
    this.request = request;
    this.proposal = proposal;
    skeleton = new Skeleton(request.tree());
  }

  /** A factor that was tried, and what stays, over what is planned. */
  private record Try(double factor, double stays, HeldTree bent) {}

  /**
   * The overbend; empty where none is needed, or none does.
   *
   * @param planned the pose bent as planned
   */
  Optional<CoilHold.Overbend> found(HeldTree planned) {
    return searched().filter(one -> one.factor > 1).map(one -> overbend(planned, one));
  }

  /** How far the hands go over what is planned; empty where nothing rests there [1]. */
  OptionalDouble factor() {
    return searched().stream().mapToDouble(Try::factor).findFirst();
  }

  private Optional<Try> searched() {
    if (proposal.handBends().isEmpty()) {
      return Optional.empty();
    }
    Try low = new Try(0, 0, null);
    Optional<Try> next = tried(1);
    Optional<Try> high = Optional.empty();
    for (int n = 0; n < MOST_TRIES; n++) {
      if (next.isPresent() && Math.abs(next.get().stays - 1) < CLOSE) {
        return next;
      }
      if (next.isPresent() && next.get().stays < 1) {
        low = next.get();
      } else {
        high = next.isPresent() ? next : high;
      }
      double factor = factor(low, high, next.isEmpty());
      if (factor > MOST || factor - low.factor < 1e-3) {
        return Optional.empty();
      }
      next = tried(factor);
    }
    return Optional.empty();
  }

  /** Beyond the last that stays short: by what is missing, or on the straight line between two. */
  private static double factor(Try low, Optional<Try> high, boolean gaveWay) {
    if (gaveWay) {
      return low.factor + (1 - low.stays) / 4;
    }
    if (high.isEmpty()) {
      return low.factor + Math.max(CLOSE, 1 - low.stays);
    }
    double part = (1 - low.stays) / (high.get().stays - low.stays);
    double kept = Math.min(0.9, Math.max(0.1, part));
    return low.factor + kept * (high.get().factor - low.factor);
  }

  private Optional<Try> tried(double factor) {
    TrialRequest further =
        request.changing(
            one ->
                one.equals(proposal)
                    ? one.withHandBends(
                        one.handBends().stream()
                            .map(hand -> hand.moving(factor * hand.move()))
                            .toList())
                    : one);
    HeldTree bent = HeldTree.of(further, HeldTree.Grip.ALL);
    if (!bent.holds()) {
      return Optional.empty();
    }
    HeldTree held = bent.then(0, HeldTree.Grip.HELD);
    return held.holds() ? Optional.of(new Try(factor, stays(held), bent)) : Optional.empty();
  }

  /** How far the first hand's place stays along its direction, over what is planned. */
  private double stays(HeldTree held) {
    HandBend hand = proposal.handBends().get(0);
    int i = skeleton.indexOf(hand.at().segment());
    double along = hand.at().along();
    return held.point(i, along * skeleton.length(i))
            .minus(skeleton.point(i, along))
            .dot(hand.direction().vector())
        / hand.move();
  }

  private CoilHold.Overbend overbend(HeldTree planned, Try found) {
    return new CoilHold.Overbend(
        found.factor,
        pulls(request, found.bent, proposal, found.factor),
        peak(found.bent) / peak(planned));
  }

  private static double peak(HeldTree bent) {
    return new PeakSearch(bent.rods(), bent.solution().pose())
        .find(0)
        .map(Peak::bendingStrain)
        .orElse(0.0);
  }

  /** What the hands of a proposal do in a pose bent by a factor of what is planned. */
  static List<CoilHold.HandPull> pulls(
      TrialRequest request, HeldTree bent, Proposal proposal, double factor) {
    List<CoilHold.HandPull> pulls = new ArrayList<>();
    int at = 0;
    for (Proposal one : request.proposals()) {
      for (HandBend hand : one.handBends()) {
        if (one.equals(proposal)) {
          pulls.add(new CoilHold.HandPull(hand.id(), factor * hand.move(), bent.handForce(at)));
        }
        at++;
      }
    }
    return pulls;
  }
}
