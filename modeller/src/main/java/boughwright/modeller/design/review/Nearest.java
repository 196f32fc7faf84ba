// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Point3;
import org.joml.Intersectiond;
import org.joml.Vector3d;

/**
 * Where two straight sticks are nearest.
 *
 * @param first distance of the place along the first stick [m]
 * @param second distance of the place along the second stick [m]
 * @param distance between the two places [m]
 */
record Nearest(double first, double second, double distance) {
  /** From one point to another. */
  record Stick(Point3 from, Point3 to) {}

  static Nearest of(Stick one, Stick other) {
    Vector3d a = new Vector3d();
    Vector3d b = new Vector3d();
    double square =
        Intersectiond.findClosestPointsLineSegments(
            one.from().x(),
            one.from().y(),
            one.from().z(),
            one.to().x(),
            one.to().y(),
            one.to().z(),
            other.from().x(),
            other.from().y(),
            other.from().z(),
            other.to().x(),
            other.to().y(),
            other.to().z(),
            a,
            b);
    return new Nearest(
        a.distance(one.from().x(), one.from().y(), one.from().z()),
        b.distance(other.from().x(), other.from().y(), other.from().z()),
        Math.sqrt(square));
  }
}
