// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * A strength over the stiffness of the same wood, when the logarithms of both are normal.
 *
 * @param stiffness standard deviation of ln stiffness
 * @param strength standard deviation of ln strength
 * @param correlation of the two logarithms
 */
record StrengthRatio(double stiffness, double strength, double correlation) {
  /** Standard deviation of ln (strength over stiffness). */
  double spread() {
    return Math.sqrt(
        stiffness * stiffness + strength * strength - 2 * correlation * stiffness * strength);
  }

  /** Correlation of ln (strength over stiffness) with ln stiffness. */
  double withStiffness() {
    return (correlation * strength - stiffness) / spread();
  }

  /** What is left of the spread when the stiffness is known. */
  double left() {
    return strength * Math.sqrt(1 - correlation * correlation);
  }
}
