// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import boughwright.modeller.design.review.WoodKind;
import boughwright.modeller.species.Species;
import java.util.Set;

/** How the wood of a species bears cuts. */
public final class CutBearing {
  private static final Set<String> SHEDDING_CONIFERS =
      Set.of("larix", "pseudolarix", "metasequoia", "taxodium");

  private CutBearing() {}

  /** Conifers that shed their needles bear cuts as conifers do. */
  public static WoodKind of(Species species) {
    if (SHEDDING_CONIFERS.contains(species.key().split("-")[0])) {
      return WoodKind.CONIFER;
    }
    return switch (TreeKind.of(species)) {
      case CONIFER -> WoodKind.CONIFER;
      case DECIDUOUS, RING_POROUS, EVERGREEN -> WoodKind.BROADLEAF;
      case UNKNOWN -> WoodKind.UNKNOWN;
    };
  }
}
