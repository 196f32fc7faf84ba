// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * How far a positive quantity may lie from its median, as standard deviations of its logarithm.
 *
 * @param unknown from not knowing this species and this tree: the same for all its limbs [1]
 * @param varies from limb to limb of one tree [1]
 */
public record Doubt(double unknown, double varies) {
  public Doubt {
    if (!(unknown >= 0 && varies >= 0) || Double.isInfinite(unknown + varies)) {
      throw new IllegalArgumentException("doubts are not negative: " + unknown + ", " + varies);
    }
  }

  /** Both together: the standard deviation for a limb picked at random [1]. */
  public double total() {
    return Math.hypot(unknown, varies);
  }

  /** The same quantity with another one, independent of it, multiplied in. */
  public Doubt with(Doubt other) {
    return new Doubt(Math.hypot(unknown, other.unknown), Math.hypot(varies, other.varies));
  }

  /** The standard deviation of the logarithm of a lognormal with a coefficient of variation. */
  public static double ofCoefficient(double variation) {
    return Math.sqrt(Math.log(1 + variation * variation));
  }
}
