// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesSpread;
import boughwright.physics.wood.WoodSpread;
import java.util.Optional;

/**
 * How much the pieces of one wood scatter, and whose figures say so.
 *
 * @param shown coefficients of variation: the wood's own where they were published, else the
 *     average of many woods; the shear strength's may be the average beside own ones
 * @param whose in words: this wood's own, those of what stands in, or the average
 */
record SpeciesScatter(WoodSpread shown, String whose) {

  static SpeciesScatter of(Species species) {
    WoodSpread average = WoodSpread.CLEAR_WOOD;
    Optional<SpeciesSpread> own = species.spread();
    if (own.isEmpty()) {
      return new SpeciesScatter(
          average, "the average of many woods, with none of its own in the table");
    }
    SpeciesSpread spread = own.get();
    boolean shear = spread.shear().isPresent();
    WoodSpread shown =
        new WoodSpread(
            spread.moe(),
            spread.mor(),
            spread.crushing(),
            spread.shear().orElse(average.shear()),
            spread.source() + (shear ? "" : "; shear: " + average.source()));
    String whose = species.isProxy() ? "of what stands in" : "its own";
    return new SpeciesScatter(shown, shear ? whose : whose + ", shear the average of many woods");
  }
}
