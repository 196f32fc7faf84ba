// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/**
 * The axis of a limb at one place of a pose.
 *
 * @param point where it is [m]
 * @param direction where it leads
 * @param strain bending strain at the outermost wood [1]
 * @param tensionSide from the axis toward the most stretched side, length one or zero
 */
record Axis(Point3 point, Direction3 direction, double strain, Vector3 tensionSide) {

  /** Part of the way to another axis: 0 is this one, 1 the other. */
  Axis toward(Axis other, double part) {
    Vector3 way = direction.times(1 - part).plus(other.direction.times(part));
    Vector3 pull =
        tensionSide.times(strain * (1 - part)).plus(other.tensionSide.times(other.strain * part));
    double size = pull.norm();
    return new Axis(
        point.toward(other.point, part),
        way.norm() < 1e-9 ? direction : way.direction(),
        size,
        size < 1e-12 ? Vector3.ZERO : pull.times(1 / size));
  }

  /** The axis of one limb as a curve. */
  interface Curve {
    /**
     * The axis at a place.
     *
     * @param k number of the segment within its limb
     * @param u fraction of that segment, 0 to 1
     */
    Axis at(int k, double u);
  }
}
