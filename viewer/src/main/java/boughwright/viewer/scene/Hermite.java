// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/** Cubic curve pieces given by both ends and the derivatives there by the piece's own parameter. */
final class Hermite {
  private Hermite() {}

  static Point3 point(Point3 start, Vector3 out, Point3 end, Vector3 in, double u) {
    double rise = u * u * (3 - 2 * u);
    return start
        .plus(end.minus(start).times(rise))
        .plus(out.times(u * (1 - u) * (1 - u)))
        .plus(in.times(u * u * (u - 1)));
  }

  static Vector3 slope(Point3 start, Vector3 out, Point3 end, Vector3 in, double u) {
    return end.minus(start)
        .times(6 * u * (1 - u))
        .plus(out.times((1 - u) * (1 - 3 * u)))
        .plus(in.times(u * (3 * u - 2)));
  }
}
