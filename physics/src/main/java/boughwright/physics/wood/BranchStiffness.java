// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.WoodOverride;
import java.util.Optional;

/**
 * Stiffness of the wood of one segment.
 *
 * @param moe modulus of elasticity E along the grain, under bark [Pa]
 * @param shearModulus modulus of rigidity G along the grain [Pa]
 * @param basis where the modulus comes from, in words
 */
public record BranchStiffness(double moe, double shearModulus, String basis) {
  /**
   * From the modulus of clear stem wood to that of live branch wood under bark [1]. Fresh stems of
   * Onoda et al. 2010 (0.93 at 4 mm) and Rosell et al. 2014 (0.64 at 13 mm) in the AusTraits data
   * set, against the density law of green hardwoods in FPL-GTR-282, pooled half and half; derived,
   * coefficient of variation 0.36. A young branch is softer than the wood of handbooks.
   */
  public static final double BRANCH_FACTOR = 0.75;

  /** Where that factor comes from, for a person to read. */
  public static final String BRANCH_FACTOR_SOURCE =
      "fresh stems of Onoda et al. 2010 and Rosell et al. 2014 (AusTraits data set) against the"
          + " density law of Wood Handbook FPL-GTR-282, pooled half and half; coefficient of"
          + " variation 0.36";

  /**
   * Young's modulus over the modulus of rigidity [1]. Wood Handbook FPL-GTR-282, Table 5-1, gives
   * G/E from 0.03 to 0.1 by species and plane; 1/16 is the usual single value for both.
   */
  public static final double MOE_OVER_SHEAR = 16;

  public BranchStiffness {
    if (!(moe > 0 && shearModulus > 0)) {
      throw new IllegalArgumentException("moduli are positive, not " + moe + ", " + shearModulus);
    }
  }

  /**
   * The stiffness of a segment's wood: what is known about the segment, else wood of one's own,
   * else the species.
   *
   * @param override what is known better about the segment
   * @param wood what the tree is made of
   * @param species values for the tree's species, or what stands in for it
   */
  public static BranchStiffness of(
      Optional<WoodOverride> override, TreeWood wood, Species species) {
    double moe = species.trueMoe() * BRANCH_FACTOR;
    double shear = 0;
    String basis =
        species.botanicalName()
            + species
                .proxyFor()
                .map(words -> ", " + words + "; times ")
                .orElse(" from the table, times ")
            + BRANCH_FACTOR
            + " from clear wood to live branch wood";
    if (wood instanceof TreeWood.Own own) {
      moe = own.moe();
      shear = own.shearModulus().orElse(0);
      basis = "wood of one's own: " + own.name();
    }
    if (override.isPresent() && override.get().moe().isPresent()) {
      moe = override.get().moe().getAsDouble();
      shear = 0;
      basis = override.get().source().orElse("given for " + override.get().pattern());
    }
    if (override.isPresent() && override.get().shearModulus().isPresent()) {
      shear = override.get().shearModulus().getAsDouble();
    }
    return new BranchStiffness(moe, shear > 0 ? shear : moe / MOE_OVER_SHEAR, basis);
  }
}
