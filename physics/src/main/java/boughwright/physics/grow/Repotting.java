// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.species.Species;
import java.util.List;

/** What the roots of a wood can bear at a repotting. */
public final class Repotting {
  /**
   * Conifers that shed their needles: their roots are treated as those of conifers (our choice).
   */
  private static final List<String> BARE_CONIFERS =
      List.of("larix", "pseudolarix", "metasequoia", "taxodium");

  private Repotting() {}

  /** By the genus of the wood. */
  public static RootCare care(Species species) {
    String genus = species.key().split("-", 2)[0];
    if (BARE_CONIFERS.contains(genus)) {
      return RootCare.CONIFER;
    }
    return switch (TreeKind.of(species)) {
      case DECIDUOUS, RING_POROUS -> RootCare.DECIDUOUS;
      case CONIFER -> RootCare.CONIFER;
      case EVERGREEN, UNKNOWN -> RootCare.OTHER;
    };
  }
}
