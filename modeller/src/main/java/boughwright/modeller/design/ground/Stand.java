// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;

/** Points of the tree in the viewer's frame: turned about the middle of the trunk base. */
final class Stand {
  private final double[][] axes = new double[3][];

  Stand(Rotation toViewer) {
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
    double x = point.x();
    double y = point.y();
    double z = point.z();
    return new Point3(along(0, x, y, z), along(1, x, y, z), along(2, x, y, z));
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
    double axis = at(wood.start()).z();
    double half = wood.startRadius() * lift(wood);
    return new Level(axis, axis + half, axis - half);
  }
}
