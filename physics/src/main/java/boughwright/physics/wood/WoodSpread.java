// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.Objects;

/**
 * How much the values of one species scatter: coefficients of variation [1].
 *
 * @param moe of the modulus of elasticity
 * @param mor of the modulus of rupture
 * @param crushing of the crushing strength along the grain
 * @param shear of the shear strength along the grain
 * @param source where they were published
 */
public record WoodSpread(double moe, double mor, double crushing, double shear, String source) {
  /** Averages over about 50 species of clear green wood, between and within trees. */
  public static final WoodSpread CLEAR_WOOD =
      new WoodSpread(
          0.22,
          0.16,
          0.18,
          0.14,
          "Forest Products Laboratory 2010, Wood Handbook FPL-GTR-190, Table 5-6 (average of about"
              + " 50 species, clear green wood)");

  public WoodSpread {
    if (!(moe > 0 && mor > 0 && crushing > 0 && shear > 0)) {
      throw new IllegalArgumentException("a spread is more than nothing");
    }
    Objects.requireNonNull(source, "source");
  }
}
