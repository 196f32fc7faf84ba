// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/** Words for a side of a branch at rest, as a person at the front of the tree sees it. */
final class SideWord {
  private SideWord() {}

  /**
   * The word that fits a side best: top, underside, left, right, front or back.
   *
   * @param side away from the axis [tree frame]
   * @param frontAzimuth the azimuth the tree is seen from [rad]
   */
  static String of(Vector3 side, double frontAzimuth) {
    Direction3 front = Direction3.ofAzimuth(frontAzimuth);
    Vector3 right = Direction3.UP.vector().cross(front.vector()).direction().vector();
    double up = side.z();
    double sideways = side.dot(right);
    double near = side.dot(front.vector());
    if (Math.abs(up) >= Math.max(Math.abs(sideways), Math.abs(near))) {
      return up > 0 ? "top" : "underside";
    }
    if (Math.abs(sideways) >= Math.abs(near)) {
      return sideways > 0 ? "right" : "left";
    }
    return near > 0 ? "front" : "back";
  }
}
