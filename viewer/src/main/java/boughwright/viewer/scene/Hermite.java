// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/**
 * A cubic piece of a curve.
 *
 * @param start where it starts [m]
 * @param out derivative there by the piece's own parameter, 0 to 1 [m]
 * @param end where it ends [m]
 * @param in derivative there [m]
 */
record Hermite(Point3 start, Vector3 out, Point3 end, Vector3 in) {

  Point3 point(double u) {
    double rise = u * u * (3 - 2 * u);
    return start
        .plus(end.minus(start).times(rise))
        .plus(out.times(u * (1 - u) * (1 - u)))
        .plus(in.times(u * u * (u - 1)));
  }

  /** Derivative by the piece's own parameter [m]. */
  Vector3 slope(double u) {
    return end.minus(start)
        .times(6 * u * (1 - u))
        .plus(out.times((1 - u) * (1 - 3 * u)))
        .plus(in.times(u * (3 * u - 2)));
  }
}
