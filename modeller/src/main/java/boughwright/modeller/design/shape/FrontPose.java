// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Standing;

/**
 * How the tree stands before the viewer: which side is the front, and how it is tilted.
 *
 * <p>The tilt is a vector seen by the viewer: its length is the angle of the tilt, its direction
 * the way the top moves.
 *
 * @param azimuth the azimuth of the tree as measured that faces the viewer [rad]
 * @param tiltRight part of the tilt to the viewer's right [rad]
 * @param tiltToward part of the tilt toward the viewer [rad]
 */
public record FrontPose(double azimuth, double tiltRight, double tiltToward) {
  public FrontPose {
    if (!Double.isFinite(azimuth) || !Double.isFinite(tiltRight) || !Double.isFinite(tiltToward)) {
      throw new IllegalArgumentException(
          "front at " + azimuth + ", tilted " + tiltRight + ", " + tiltToward);
    }
  }

  /** A front of the tree as it was measured, not tilted [rad]. */
  public static FrontPose upright(double azimuth) {
    return new FrontPose(azimuth, 0, 0);
  }

  /** A front [rad] and a planting angle as a plan holds them. */
  public static FrontPose of(double azimuth, Planting planting) {
    double round = azimuth - planting.towardAzimuth();
    return new FrontPose(
        azimuth, planting.tilt() * Math.sin(round), planting.tilt() * Math.cos(round));
  }

  /** Angle of the tilt, 0 or more [rad]. */
  public double tilt() {
    return Math.hypot(tiltRight, tiltToward);
  }

  /** The planting angle as a plan holds it. */
  public Planting planting() {
    return new Planting(tilt(), azimuth - Math.atan2(tiltRight, tiltToward));
  }

  /** The turn from the tree frame as measured to the viewer's frame. */
  public Rotation toViewer() {
    return Rotation.about(Direction3.UP, azimuth).after(Standing.turn(planting()));
  }
}
