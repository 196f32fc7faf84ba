// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import java.util.List;
import java.util.stream.Collectors;

/** Warns of a species that the table does not know, or knows more than once. */
final class SpeciesCheck {
  private static final String GENERIC = "; generic wood values are used until then";

  private SpeciesCheck() {}

  static void note(ObjectReader top, String name) {
    SpeciesTable table = SpeciesTable.bundled();
    List<Species> found = table.find(name);
    if (found.size() == 1) {
      return;
    }
    String quoted = Value.Text.quoted(name);
    List<Species> twins = table.lookAlikes(name);
    if (found.size() > 1) {
      top.warn(
          "species",
          "several-species",
          "species " + quoted + " may be one of " + found.size() + " woods",
          "Write " + keys(found) + GENERIC);
    } else if (!twins.isEmpty()) {
      top.warn(
          "species",
          "look-alike-species",
          "species " + quoted + " looks like a known name but holds letters of another alphabet",
          "Write " + keys(twins) + GENERIC);
    } else {
      List<String> near = table.suggest(name);
      top.warn(
          "species",
          "unknown-species",
          "species " + quoted + " is not in the table of woods",
          (near.isEmpty()
                  ? "Choose a name of the table, or give wood of your own with its moe_GPa"
                  : "Write " + quotedKeys(near) + " if that is meant")
              + GENERIC);
    }
  }

  private static String keys(List<Species> species) {
    return quotedKeys(species.stream().limit(8).map(Species::key).toList());
  }

  private static String quotedKeys(List<String> keys) {
    return keys.stream().map(key -> '"' + key + '"').collect(Collectors.joining(" or "));
  }
}
