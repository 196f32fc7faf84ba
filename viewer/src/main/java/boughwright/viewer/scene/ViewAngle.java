// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * From where the tree is looked at.
 *
 * @param azimuth where the viewer stands, counted as in the tree frame [rad]
 * @param elevation how far above level the viewer looks from, -pi/2 to pi/2 [rad]
 */
public record ViewAngle(double azimuth, double elevation) {
  public ViewAngle {
    if (!Double.isFinite(azimuth) || !(Math.abs(elevation) <= Math.PI / 2)) {
      throw new IllegalArgumentException("view from " + azimuth + ", " + elevation);
    }
  }

  /** Level with the tree, from an azimuth [rad]. */
  public static ViewAngle level(double azimuth) {
    return new ViewAngle(azimuth, 0);
  }

  /** Straight from above, the front side at the foot of the picture. */
  public static ViewAngle above(double azimuth) {
    return new ViewAngle(azimuth, Math.PI / 2);
  }

  /** Turned further; it stops at straight from above and from below. */
  public ViewAngle turned(double azimuthStep, double elevationStep) {
    double raised = Math.min(Math.PI / 2, Math.max(-Math.PI / 2, elevation + elevationStep));
    return new ViewAngle(azimuth + azimuthStep, raised);
  }

  /** Part of the shorter way round to another view: 0 is here, 1 is there. */
  public ViewAngle toward(ViewAngle other, double part) {
    double round = Math.IEEEremainder(other.azimuth - azimuth, 2 * Math.PI);
    return new ViewAngle(azimuth + part * round, elevation + part * (other.elevation - elevation));
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
