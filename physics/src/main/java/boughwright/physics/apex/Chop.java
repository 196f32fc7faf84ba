// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.ShootGrowth;
import boughwright.physics.grow.Thickening;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.grow.Years;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The trunk chopped to a bud, and a new leader grown from it.
 *
 * @param at where it is chopped
 * @param caliper diameter over bark there [m]
 * @param height how high the top is to be in the end [m]
 * @param wound what the chop leaves
 * @param thickening until the new leader's caliper is a believable part of that below
 * @param growing until it is as high as wanted
 */
public record Chop(
    Spot at, double caliper, double height, WoundClosure wound, Years thickening, Years growing) {
  /** Final height over the caliper of the base (common practice, no source) [1]. */
  static final double HEIGHT = 6;

  /** The first chop is at this part of the final height (common practice, no source) [1]. */
  private static final double FIRST_PART = 1.0 / 3;

  public Chop {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(wound, "wound");
    Objects.requireNonNull(thickening, "thickening");
    Objects.requireNonNull(growing, "growing");
    if (!(caliper > 0 && height > 0)) {
      throw new IllegalArgumentException("a chop of " + caliper + " for a height of " + height);
    }
  }

  /** Until everything is done. */
  public Years years() {
    return Years.later(Years.later(thickening, growing), wound.years());
  }

  /** What it costs in each respect, as {@link ApexOption#costs()}: the leader is still a bud. */
  double[] costs() {
    return new double[] {0, 0, 0, caliper, years().likely()};
  }

  /** The usual first chop; empty where the trunk does not come as high. */
  static Optional<Chop> of(
      Skeleton skeleton, TrunkLine line, ToDoubleFunction<Point3> heightOf, CutTime time) {
    double height = HEIGHT * line.calipers().get(0);
    return place(skeleton, line, heightOf, FIRST_PART * height)
        .map(
            at -> {
              double caliper = skeleton.caliper(skeleton.indexOf(at.segment()), at.along());
              YearlyRing ring = YearlyRing.of(skeleton.tree().setting());
              return new Chop(
                  at,
                  caliper,
                  height,
                  WoundClosure.of(caliper, ring, time),
                  Thickening.toPart(0, caliper, ApexSearch.BELIEVABLE, ring),
                  ShootGrowth.of(skeleton.tree().setting()).toGrow((1 - FIRST_PART) * height));
            });
  }

  private static Optional<Spot> place(
      Skeleton skeleton, TrunkLine line, ToDoubleFunction<Point3> heightOf, double height) {
    for (int n = 0; n < line.segments().size(); n++) {
      double from = heightOf.applyAsDouble(line.points().get(n));
      double to = heightOf.applyAsDouble(line.points().get(n + 1));
      if (to >= height && to > from) {
        int i = line.segments().get(n);
        double part = Math.max(0, (height - from) / (to - from));
        Point3 at = line.points().get(n).toward(line.points().get(n + 1), part);
        double along = skeleton.start(i).distance(at) / skeleton.length(i);
        return Optional.of(new Spot(skeleton.segment(i).id(), Math.min(1, along)));
      }
    }
    return Optional.empty();
  }
}
