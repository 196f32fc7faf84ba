// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.modeller.species.Species;
import java.util.OptionalDouble;

/**
 * Strains at which clear green stem wood of a species is known to change, to be held beside a
 * trial. Strength over stiffness of the same wood, so that they do not depend on how stiff the
 * branch is taken.
 *
 * @param crushingStrain crushing strength over modulus: where the inside of a bend starts to flow
 *     [1]
 * @param ruptureRatio modulus of rupture over modulus: the nominal strain of a straight-line beam
 *     at its greatest load; wood has flowed on the inside long before [1]
 * @param source where the values were published
 */
public record WoodLimits(
    OptionalDouble crushingStrain, OptionalDouble ruptureRatio, String source) {
  /**
   * Crushing strain of green wood whose crushing strength nobody published [1]: the median of 29
   * green woods in Record 1914, The Mechanical Properties of Wood (0.178 to 0.372 %).
   */
  public static final double USUAL_CRUSHING_STRAIN = 0.00251;

  public static WoodLimits of(Species species) {
    return new WoodLimits(
        over(species.crushing(), species.trueMoe()),
        over(species.mor(), species.trueMoe()),
        species.source());
  }

  private static OptionalDouble over(OptionalDouble strength, double modulus) {
    return strength.isPresent()
        ? OptionalDouble.of(strength.getAsDouble() / modulus)
        : OptionalDouble.empty();
  }
}
