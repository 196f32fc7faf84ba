// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.tree.Kind;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a shoot can be shortened: just beyond a live side shoot that takes over. Broadleaved wood
 * may also be cut where nothing grows, for it often buds from old wood; conifers mostly do not
 * (common practice, no source).
 */
final class Shortening {
  /** A side shoot nearer than this to the union leaves hardly any branch [1]. */
  private static final double FIRST = 0.25;

  /** A cut beyond this leaves nearly all of it [1]. */
  private static final double LAST = 0.9;

  /** Where broadleaved wood is cut when no side shoot takes over [1]. */
  private static final double BARE = 1.0 / 3;

  private final Structure structure;

  Shortening(Structure structure) {
    this.structure = structure;
  }

  /** The usual place. */
  OptionalDouble usual(Shoot shoot) {
    double length = shoot.line().length();
    Optional<Shoot> side =
        structure.on(shoot).stream()
            .filter(Shortening::takesOver)
            .filter(one -> one.seat().at() >= FIRST * length)
            .findFirst();
    return side.isPresent() ? beyond(shoot, side.get()) : bare(shoot, BARE * length);
  }

  /** Before a place that is in the way. */
  OptionalDouble before(Shoot shoot, double at) {
    Optional<Shoot> side =
        structure.on(shoot).stream()
            .filter(one -> structure.isStem(shoot) ? structure.isJudged(one) : takesOver(one))
            .filter(one -> beyondUnion(one) < at)
            .reduce((first, second) -> second);
    if (side.isPresent()) {
      return beyond(shoot, side.get());
    }
    return shoot.isMain() ? OptionalDouble.empty() : bare(shoot, at - shoot.line().caliper(at));
  }

  /** Into bare wood, so that it buds further in. */
  OptionalDouble into(Shoot shoot, double at) {
    return bare(shoot, at);
  }

  private static boolean takesOver(Shoot shoot) {
    return shoot.counts() && shoot.kind() != Kind.DEADWOOD;
  }

  private static double beyondUnion(Shoot side) {
    return side.seat().at() + side.seat().caliper() / 2;
  }

  private static OptionalDouble beyond(Shoot shoot, Shoot side) {
    double at = beyondUnion(side);
    return at <= LAST * shoot.line().length() ? OptionalDouble.of(at) : OptionalDouble.empty();
  }

  /** Outside the collar, and only where the wood may bud. */
  private OptionalDouble bare(Shoot shoot, double at) {
    boolean isOut =
        !shoot.isMain() && at > (shoot.seat().parentCaliper() + shoot.seat().caliper()) / 2;
    return isOut && structure.rules().wood() == WoodKind.BROADLEAF
        ? OptionalDouble.of(at)
        : OptionalDouble.empty();
  }
}
