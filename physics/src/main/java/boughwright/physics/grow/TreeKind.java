// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import java.util.List;

/** Kinds of trees by how they grow in the course of a year. */
public enum TreeKind {
  /** Leafless in winter, growth rings without large early pores; larch and swamp cypress too. */
  DECIDUOUS,
  /** Elm, ash, oak, zelkova, hackberry and their like. */
  RING_POROUS,
  /** Evergreen conifers. */
  CONIFER,
  /** Evergreen broadleaved trees. */
  EVERGREEN,
  /** Not known. */
  UNKNOWN;

  private static final List<String> RING_POROUS_GENERA =
      List.of(
          "ulmus",
          "fraxinus",
          "quercus",
          "zelkova",
          "celtis",
          "castanea",
          "robinia",
          "gleditsia",
          "carya");

  private static final List<String> CONIFER_GENERA =
      List.of(
          "pinus",
          "picea",
          "abies",
          "tsuga",
          "pseudotsuga",
          "juniperus",
          "taxus",
          "thuja",
          "chamaecyparis",
          "callitropsis",
          "calocedrus",
          "cupressocyparis",
          "sequoia",
          "podocarpus",
          "cedrus",
          "cryptomeria",
          "cupressus",
          "generic-softwood");

  private static final List<String> EVERGREEN_GENERA =
      List.of(
          "buxus",
          "olea",
          "ficus",
          "ligustrum",
          "rhododendron",
          "ilex",
          "acacia",
          "magnolia-grandiflora",
          "quercus-virginiana");

  /** The kind of a wood, by its genus. */
  public static TreeKind of(Species species) {
    String key = species.key();
    if (key.equals(SpeciesTable.GENERIC)) {
      return UNKNOWN;
    }
    if (isOf(key, EVERGREEN_GENERA)) {
      return EVERGREEN;
    }
    if (isOf(key, CONIFER_GENERA)) {
      return CONIFER;
    }
    return isOf(key, RING_POROUS_GENERA) ? RING_POROUS : DECIDUOUS;
  }

  private static boolean isOf(String key, List<String> starts) {
    return starts.stream().anyMatch(start -> key.equals(start) || key.startsWith(start + "-"));
  }
}
