// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;

/** Woods as a grower calls and seeks them. */
final class SpeciesNames {
  private SpeciesNames() {}

  /** Its common and its botanical name. */
  static String of(Species species) {
    if (species.key().equals(SpeciesTable.GENERIC)) {
      return "Unknown wood";
    }
    String botanical = species.botanicalName();
    if (species.commonNames().isEmpty() || species.commonNames().get(0).equals(botanical)) {
      return botanical;
    }
    String common = species.commonNames().get(0);
    return Character.toUpperCase(common.charAt(0)) + common.substring(1) + ", " + botanical;
  }

  /** What stands in for it, or that its values are its own. */
  static String values(Species species) {
    return species
        .proxyFor()
        .map(words -> "Stand-in: " + words)
        .orElse("Values of this very wood, green.");
  }

  /** Woods with all words of a text in their names, in the order of the table. */
  static List<Species> matching(SpeciesTable table, String text) {
    String[] words = plain(text).split("\\s+");
    return table.all().stream()
        .filter(
            species -> {
              String names =
                  plain(
                      species.key()
                          + " "
                          + species.botanicalName()
                          + " "
                          + String.join(" ", species.commonNames()));
              for (String word : words) {
                if (!names.contains(word)) {
                  return false;
                }
              }
              return true;
            })
        .toList();
  }

  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT)
        .replace('-', ' ')
        .strip();
  }
}
