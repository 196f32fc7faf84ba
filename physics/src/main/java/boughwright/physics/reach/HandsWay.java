// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.Optional;

/**
 * How far a hand goes along one way, as parts of the first bend: further until what it lets go of
 * passes the target, breaking risks more than is allowed, or no pose holds; then between the last
 * that fell short and that.
 */
final class HandsWay {
  /** What rests at less than this part of the way has hardly begun to stay [1]. */
  private static final double MOVES = 0.05;

  /** While hardly anything stays the hand goes so many times as far [1]. */
  private static final double FURTHER = 2;

  /** A rest within this part of the way is there [1]. */
  private static final double THERE = 0.003;

  /** Once both ends are as near as this part of themselves, the way is known [1]. */
  private static final double CLOSE = 0.005;

  /** Standard deviations below the risk allowed that are aimed at, and that are near enough [1]. */
  private static final double AIMED = 0.01;

  private static final double AT_LIMIT = 0.03;

  /** Spread of ln of a limit, to begin with: about what is believed of branch wood [1]. */
  private static final double SPREAD = 0.4;

  /** A next part keeps this part of the gap away from either end [1]. */
  private static final double INSIDE = 0.05;

  private final double mostRisk;
  private final double allowed;
  private Step before = new Step(0, new Look(0, 0));
  private Step low = before;
  private Optional<Step> high = Optional.empty();
  private double next = 1;
  private boolean there;

  /**
   * What a bend that was let go looks like.
   *
   * @param stays the part of the way to the target that stays [1]
   * @param breaking what breaking risks while it is bent [1]
   */
  record Look(double stays, double breaking) {
    double deviations() {
      return Easing.deviations(breaking);
    }
  }

  /** A part of the first bend and what came of it; no look where no pose holds. */
  private record Step(double part, Optional<Look> look) {
    Step(double part, Look look) {
      this(part, Optional.of(look));
    }

    double stays() {
      return look.orElseThrow().stays;
    }

    double deviations() {
      return look.orElseThrow().deviations();
    }
  }

  /** A way on which breaking may risk so much [1]. */
  HandsWay(double mostRisk) {
    this.mostRisk = mostRisk;
    allowed = Easing.deviations(mostRisk);
  }

  /** The part of the first bend that is to be tried next [1]. */
  double next() {
    return next;
  }

  /** Takes what came of the last part; empty where no pose holds. */
  void learn(Optional<Look> found) {
    Step step = new Step(next, found);
    boolean within = found.filter(look -> look.breaking <= mostRisk).isPresent();
    there |= within && step.stays() > 1 - THERE;
    if (within && step.stays() < 1) {
      before = low;
      low = step;
    } else {
      high = Optional.of(step);
    }
    next = high.map(this::between).orElseGet(this::beyond);
  }

  /** Whether another trial tells more. */
  boolean goesOn() {
    if (low.stays() > 1 - THERE || high.filter(this::isJustBeyond).isPresent()) {
      return false;
    }
    boolean atLimit =
        high.filter(step -> !isWithin(step)).isPresent()
            && low.part > 0
            && low.deviations() > allowed - AT_LIMIT;
    return !atLimit && high.filter(step -> step.part - low.part < CLOSE * step.part).isEmpty();
  }

  private boolean isJustBeyond(Step step) {
    return isWithin(step) && step.stays() < 1 + THERE;
  }

  private boolean isWithin(Step step) {
    return step.look.filter(look -> look.breaking <= mostRisk).isPresent();
  }

  /** Whether risk or wood keep the hand from going as far as the target asks. */
  boolean isLimited() {
    return !there && high.filter(step -> !isWithin(step)).isPresent();
  }

  private double beyond() {
    if (low.stays() < MOVES) {
      return FURTHER * low.part;
    }
    double step = (1 - low.stays()) / slope();
    return low.part + Math.min(step, (FURTHER - 1) * low.part);
  }

  /** Change of what stays with the part; what lasts never grows faster than the bend itself. */
  private double slope() {
    double rise = (low.stays() - before.stays()) / (low.part - before.part);
    return Math.min(1, Math.max(MOVES, rise));
  }

  private double between(Step end) {
    double least = low.part + INSIDE * (end.part - low.part);
    double most = end.part - INSIDE * (end.part - low.part);
    double wanted =
        end.look.isEmpty()
            ? (low.part + end.part) / 2
            : Math.min(atTarget(end), isWithin(end) ? end.part : atLimit(end));
    return Math.min(most, Math.max(least, wanted));
  }

  /** Where the straight line between both ends is at the target. */
  private double atTarget(Step end) {
    double rise = end.stays() - low.stays();
    return end.stays() > 1 ? low.part + (1 - low.stays()) / rise * (end.part - low.part) : end.part;
  }

  /** Where breaking risks what is allowed: its deviations go with the logarithm of the part. */
  private double atLimit(Step end) {
    double aim = allowed - AIMED;
    boolean isSeen = low.part > 0 && low.deviations() > -Easing.FAR;
    double spread =
        isSeen ? Math.log(end.part / low.part) / (end.deviations() - low.deviations()) : SPREAD;
    return end.part * Math.exp((aim - end.deviations()) * spread);
  }
}
