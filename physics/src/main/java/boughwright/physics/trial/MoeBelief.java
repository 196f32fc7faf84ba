// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * What is believed of a modulus of elasticity: lognormal.
 *
 * @param median median [Pa]
 * @param spread standard deviation of its logarithm [1]
 */
public record MoeBelief(double median, double spread) {
  public MoeBelief {
    if (!(median > 0 && spread >= 0) || Double.isInfinite(median + spread)) {
      throw new IllegalArgumentException("no belief: " + median + " Pa, " + spread);
    }
  }

  /** Nine tenths of it, half of the rest each side [Pa]. */
  public Range range() {
    double wide = Math.exp(Readings.NINE_IN_TEN * spread);
    return new Range(median / wide, median, median * wide);
  }

  /** Coefficient of variation [1]. */
  public double variation() {
    return Math.sqrt(Math.expm1(spread * spread));
  }
}
