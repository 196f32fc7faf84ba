// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * From where the tree is looked at.
 *
 * @param azimuth where the viewer stands, counted as in the tree frame [rad]
 * @param elevation how far above level the viewer looks from, more than -pi/2 and less than pi/2
 *     [rad]
 */
public record ViewAngle(double azimuth, double elevation) {
  public ViewAngle {
    if (!Double.isFinite(azimuth) || !(Math.abs(elevation) < Math.PI / 2)) {
      throw new IllegalArgumentException("view from " + azimuth + ", " + elevation);
    }
  }

  /** Level with the tree, from an azimuth [rad]. */
  public static ViewAngle level(double azimuth) {
    return new ViewAngle(azimuth, 0);
  }

  /** From the tree toward the viewer. */
  public Direction3 toViewer() {
    return Direction3.ofAzimuth(azimuth, elevation);
  }

  /** The viewer's right. */
  public Direction3 right() {
    return Direction3.ofAzimuth(azimuth - Math.PI / 2);
  }

  /** The viewer's up: square to the line of sight. */
  public Direction3 up() {
    Vector3 up = toViewer().vector().cross(right().vector());
    return up.direction();
  }
}
