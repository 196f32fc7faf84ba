// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;

/** Points of the tree in the viewer's frame: turned about the middle of the trunk base. */
final class Stand {
  private final double[][] axes = new double[3][];
  private final Point3 foot;

  /** For a turn about the middle of the trunk base [tree frame], where the soil line is. */
  Stand(Rotation toViewer, Point3 foot) {
    this.foot = foot;
    axes[0] = row(toViewer, new Direction3(1, 0, 0));
    axes[1] = row(toViewer, new Direction3(0, 1, 0));
    axes[2] = row(toViewer, Direction3.UP);
  }

  private static double[] row(Rotation toViewer, Direction3 axis) {
    Direction3 back = toViewer.inverse().turn(axis);
    return new double[] {back.x(), back.y(), back.z()};
  }

  private double along(int axis, double x, double y, double z) {
    double[] row = axes[axis];
    return row[0] * x + row[1] * y + row[2] * z;
  }

  Point3 at(Point3 point) {
    double x = point.x() - foot.x();
    double y = point.y() - foot.y();
    double z = point.z() - foot.z();
    return new Point3(along(0, x, y, z), along(1, x, y, z), along(2, x, y, z));
  }

  /** Height over the soil line [m]. */
  double height(Point3 point) {
    return along(2, point.x() - foot.x(), point.y() - foot.y(), point.z() - foot.z());
  }

  /** Height over the soil line as measured [m]. */
  double measuredHeight(Point3 point) {
    return point.z() - foot.z();
  }

  /** How a direction goes up: the sine of its elevation [1]. */
  double rise(Direction3 direction) {
    return along(2, direction.x(), direction.y(), direction.z());
  }

  /** Height of the upper rim of a round section above its middle, per radius [1]. */
  double lift(Frustum wood) {
    double rise = rise(wood.direction());
    return Math.sqrt(Math.max(0, 1 - rise * rise));
  }

  /** How the start of a piece lies to the soil line. */
  Level level(Frustum wood) {
    double axis = height(wood.start());
    double half = wood.startRadius() * lift(wood);
    return new Level(axis, axis + half, axis - half);
  }
}
