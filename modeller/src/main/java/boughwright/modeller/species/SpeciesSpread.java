// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How much the values of one wood scatter between its pieces: coefficients of variation, standard
 * deviation over mean [1].
 *
 * @param moe of the modulus of elasticity
 * @param mor of the modulus of rupture
 * @param crushing of the crushing strength along the grain
 * @param shear of the shear strength along the grain
 * @param source where they were published
 */
public record SpeciesSpread(
    double moe, double mor, double crushing, OptionalDouble shear, String source) {
  public SpeciesSpread {
    if (!(moe > 0 && mor > 0 && crushing > 0) || !(shear.orElse(1) > 0)) {
      throw new IllegalArgumentException("a spread is more than nothing");
    }
    Objects.requireNonNull(source, "source");
  }
}
