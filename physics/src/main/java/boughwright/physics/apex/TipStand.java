// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

/**
 * How a tip stands at the planting angle.
 *
 * @param beside how far it is from the vertical over the middle of the trunk base [m]
 * @param lean angle of its last stretch from the vertical [rad]
 * @param height how high it is over the soil [m]
 */
public record TipStand(double beside, double lean, double height) {
  /** Over the trunk base: within this part of its caliper from the middle (a choice) [1]. */
  private static final double OVER = 0.5;

  /** Upright: leaning no more than so much (common practice, no source) [rad]. */
  private static final double UPRIGHT = Math.toRadians(15);

  public TipStand {
    if (!(beside >= 0 && lean >= 0) || !Double.isFinite(height)) {
      throw new IllegalArgumentException("a tip at " + beside + ", " + lean + ", " + height);
    }
  }

  /**
   * True if it stands over the trunk base and goes upward.
   *
   * @param baseCaliper diameter of the trunk at its base over bark [m]
   */
  public boolean isInLine(double baseCaliper) {
    return beside <= OVER * baseCaliper && lean <= UPRIGHT;
  }
}
