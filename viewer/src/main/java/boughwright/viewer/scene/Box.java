// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;

/**
 * The smallest upright box round some points.
 *
 * @param low corner with the smallest coordinates [m, scene frame]
 * @param high corner with the largest coordinates [m, scene frame]
 */
public record Box(Point3 low, Point3 high) {

  static Box around(Point3 point) {
    return new Box(point, point);
  }

  Box with(Point3 point) {
    return new Box(
        new Point3(
            Math.min(low.x(), point.x()),
            Math.min(low.y(), point.y()),
            Math.min(low.z(), point.z())),
        new Point3(
            Math.max(high.x(), point.x()),
            Math.max(high.y(), point.y()),
            Math.max(high.z(), point.z())));
  }

  Box with(Box other) {
    return with(other.low).with(other.high);
  }

  /** Length of the diagonal [m]. */
  public double diagonal() {
    return low.distance(high);
  }

  /** The middle [m, scene frame]. */
  public Point3 centre() {
    return low.toward(high, 0.5);
  }
}
