// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import boughwright.modeller.species.Species;

/**
 * What docs/theory/risk.md says is believed of a branch, written down again from that page and from
 * the published figures it names, for checks that must share nothing with the program.
 *
 * @param species wood, as printed
 * @param moeMedian median modulus over that of clear wood [1]
 * @param moeBetween standard deviation of ln of it [1]
 * @param correlation of ln strength with ln modulus, between branches and clear wood [1]
 * @param crackFactor median crack strain over strength over stiffness [1]
 */
record Belief(
    Species species, double moeMedian, double moeBetween, double correlation, double crackFactor) {
  /**
   * Within a species: coefficients of variation of modulus, modulus of rupture and crushing
   * strength, Wood Handbook Table 5-6; correlation of ln strength with ln modulus, Onoda et al.
   * 2010, AusTraits.
   */
  private static final double MOE_WITHIN = ofCoefficient(0.22);

  private static final double MOR_WITHIN = ofCoefficient(0.16);
  private static final double CRUSHING_WITHIN = ofCoefficient(0.18);
  private static final double WITHIN = 0.84;

  /** Between species: CV 0.36 and 0.38 of stiffness and strength. */
  private static final double MOR_BETWEEN = 0.37;

  private static final double STIFF_BETWEEN = 0.35;

  private static final double CRACK_MODEL = 0.27;

  /** Yield strain between species. */
  private static final double YIELD_BETWEEN = 0.20;

  private static double ofCoefficient(double variation) {
    return Math.sqrt(Math.log(1 + variation * variation));
  }

  /** As the page says. */
  static Belief stated(Species species) {
    return new Belief(species, 0.75, ofCoefficient(0.36), 0.76, 2.0);
  }

  double moeWithin() {
    return MOE_WITHIN;
  }

  /** Modulus for standard normals of species and of tree and limb [Pa]. */
  double moe(double between, double within) {
    return species.trueMoe() * moeMedian * Math.exp(moeBetween * between + MOE_WITHIN * within);
  }

  /** Strain at which flow begins, for standard normals of tree and limb and of its own [1]. */
  double yield(double within, double own) {
    double free = CRUSHING_WITHIN * Math.sqrt(1 - WITHIN * WITHIN);
    return species.crushing().orElseThrow()
        / species.trueMoe()
        * Math.exp(
            (WITHIN * CRUSHING_WITHIN - MOE_WITHIN) * within
                + Math.hypot(YIELD_BETWEEN, free) * own);
  }

  /** Standard deviation of ln strength over stiffness, between branches and clear wood. */
  private double ratio() {
    return Math.sqrt(
        STIFF_BETWEEN * STIFF_BETWEEN
            + MOR_BETWEEN * MOR_BETWEEN
            - 2 * correlation * STIFF_BETWEEN * MOR_BETWEEN);
  }

  /**
   * Crack strain of a branch of 1 mm, for three standard normals: the two of the modulus and one of
   * its own [1].
   */
  double crack(double between, double within, double own) {
    double nominal = species.mor().orElseThrow() / species.trueMoe();
    double slope = (WITHIN * MOR_WITHIN - MOE_WITHIN) * within;
    double left = MOR_WITHIN * Math.sqrt(1 - WITHIN * WITHIN);
    double with = correlation * MOR_BETWEEN - STIFF_BETWEEN;
    double free = Math.sqrt(ratio() * ratio() - with * with);
    double spread = Math.sqrt(free * free + left * left + CRACK_MODEL * CRACK_MODEL);
    return crackFactor * nominal * Math.exp(with * between + slope + spread * own);
  }

  /** Crack strain over that of clear wood, by diameter [m]. */
  static double size(double diameter) {
    return Math.max(1, 1.35 / 0.61 * Math.pow(1000 * diameter, -0.21));
  }
}
