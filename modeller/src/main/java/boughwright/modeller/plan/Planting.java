// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

/**
 * The planting angle: how the tree is tilted about its trunk base, from the pose as measured.
 *
 * @param tilt angle of the tilt [rad]
 * @param towardAzimuth the azimuth toward which the top moves [rad]
 */
public record Planting(double tilt, double towardAzimuth) {
  public Planting {
    if (!Double.isFinite(tilt) || !Double.isFinite(towardAzimuth)) {
      throw new IllegalArgumentException("tilt " + tilt + " toward " + towardAzimuth);
    }
  }
}
