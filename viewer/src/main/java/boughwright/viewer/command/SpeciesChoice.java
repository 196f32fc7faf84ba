// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds the wood a person names. */
final class SpeciesChoice {
  private static final int MOST_NAMED = 8;

  private SpeciesChoice() {}

  /**
   * The one wood of the table a name means.
   *
   * @param where the option or word the name came from
   * @param name a key, botanical or common name
   * @throws InputException if no wood has that name, or several do
   */
  static Species named(String where, String name) throws InputException {
    SpeciesTable table = SpeciesTable.bundled();
    List<Species> found = table.find(name);
    if (found.size() == 1) {
      return found.get(0);
    }
    String quoted = UsageFaults.quoted(name);
    if (found.size() > 1) {
      List<String> keys = found.stream().limit(MOST_NAMED).map(Species::key).toList();
      throw refused(
          where, "several-species", quoted + " may be one of " + found.size() + " woods", keys);
    }
    List<String> near = table.suggest(name);
    throw refused(
        where,
        "unknown-species",
        quoted + " is not in the table of woods",
        near.isEmpty() ? holding(name, table) : near);
  }

  /** Keys of woods with a word in one of their names. */
  private static List<String> holding(String word, SpeciesTable table) {
    String low = word.strip().toLowerCase(Locale.ROOT);
    return table.all().stream()
        .filter(
            wood ->
                !low.isEmpty()
                    && Stream.concat(
                            Stream.of(wood.key(), wood.botanicalName()),
                            wood.commonNames().stream())
                        .anyMatch(name -> name.toLowerCase(Locale.ROOT).contains(low)))
        .map(Species::key)
        .limit(MOST_NAMED)
        .toList();
  }

  private static InputException refused(
      String where, String kind, String found, List<String> keys) {
    String remedy =
        keys.isEmpty()
            ? "java -jar boughwright.jar species lists them; unknown stands for any wood"
            : "Write " + keys.stream().map(UsageFaults::quoted).collect(Collectors.joining(" or "));
    return new InputException(Problem.fault(Place.of(where), kind, found, remedy));
  }
}
