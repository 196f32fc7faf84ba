// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;

/**
 * A straight tapered piece of wood, over bark.
 *
 * @param segment index of the segment in the skeleton
 * @param start middle of its inner end [m, tree frame]
 * @param end middle of its outer end [m, tree frame]
 * @param startRadius radius at the inner end [m]
 * @param endRadius radius at the outer end [m]
 */
public record Frustum(int segment, Point3 start, Point3 end, double startRadius, double endRadius) {
  public Frustum {
    if (!(startRadius > 0 && endRadius > 0) || Double.isInfinite(startRadius + endRadius)) {
      throw new IllegalArgumentException("radii are " + startRadius + " and " + endRadius);
    }
  }

  /** Length of its axis [m]. */
  public double length() {
    return end.minus(start).norm();
  }

  public Direction3 direction() {
    return end.minus(start).direction();
  }
}
