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
