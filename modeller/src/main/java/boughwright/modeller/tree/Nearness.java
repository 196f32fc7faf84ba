// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/**
 * Where a point lies beside a segment.
 *
 * @param along foot of the point on the axis, as a fraction; below 0 or above 1 beyond an end [1]
 * @param distance from the point to the endless line through the axis [m]
 * @param radius of the segment over bark at the foot [m]
 */
record Nearness(double along, double distance, double radius) {

  static Nearness of(Layout layout, int i, Point3 point) {
    Point3 start = layout.start[i];
    Vector3 axis = layout.segments.get(i).end().minus(start);
    double along = point.minus(start).dot(axis) / axis.dot(axis);
    double distance = point.distance(start.plus(axis.times(along)));
    double inSegment = Math.min(1, Math.max(0, along));
    return new Nearness(along, distance, layout.caliper(i, inSegment) / 2);
  }

  boolean inside() {
    return along >= 0 && along <= 1 && distance < radius;
  }
}
