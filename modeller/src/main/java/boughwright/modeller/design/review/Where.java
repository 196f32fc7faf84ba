// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import java.util.Objects;

/**
 * A place for a mark.
 *
 * @param spot the place on the tree
 * @param at the same as a point on the axis [m, tree frame]
 * @param caliper thickness there [m]
 */
public record Where(Spot spot, Point3 at, double caliper) {
  public Where {
    Objects.requireNonNull(spot, "spot");
    Objects.requireNonNull(at, "at");
    if (!(caliper > 0)) {
      throw new IllegalArgumentException("caliper is " + caliper);
    }
  }

  static Where on(WoodLine line, double s) {
    double there = Math.min(Math.max(0, s), line.length());
    return new Where(line.spot(there), line.point(there), line.caliper(there));
  }
}
