// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

import boughwright.modeller.problem.NearNames;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The woods known, findable by key, botanical name or common name.
 *
 * <p>Besides woods with published green values it holds named proxies ({@link Species#isProxy()})
 * and three stand-ins computed from the published rows, {@value #GENERIC} for a wood of which
 * nothing is known.
 */
public final class SpeciesTable {
  /** Key of the stand-in for a wood of which nothing is known. */
  public static final String GENERIC = "unknown";

  private final List<Species> all;
  private final Map<String, Species> byKey = new LinkedHashMap<>();
  private final Map<String, Set<Species>> byName = new LinkedHashMap<>();

  /**
   * A table of woods; one of them has the key {@value #GENERIC}.
   *
   * @throws IllegalArgumentException if two woods share a key or none is the generic one
   */
  public SpeciesTable(List<Species> species) {
    all = List.copyOf(species);
    for (Species one : all) {
      if (byKey.put(one.key(), one) != null) {
        throw new IllegalArgumentException("two woods have the key " + one.key());
      }
      names(one).forEach(name -> byName.computeIfAbsent(name, n -> new LinkedHashSet<>()).add(one));
    }
    if (!byKey.containsKey(GENERIC)) {
      throw new IllegalArgumentException("the generic wood is missing");
    }
  }

  private static Set<String> names(Species species) {
    Set<String> names = new LinkedHashSet<>();
    names.add(WoodName.plain(species.key()));
    names.add(WoodName.plain(species.botanicalName()));
    species.commonNames().forEach(name -> names.add(WoodName.plain(name)));
    return names;
  }

  /** The table that comes with the program. */
  public static SpeciesTable bundled() {
    return Bundled.TABLE;
  }

  /** Loaded when first asked for, once. */
  private static final class Bundled {
    static final SpeciesTable TABLE = new SpeciesTable(SpeciesCsv.bundled());
  }

  /** All woods: published and proxies in the order of the table, then the stand-ins. */
  public List<Species> all() {
    return all;
  }

  /**
   * The woods a text may mean: the one with that key, else all with that botanical or common name.
   *
   * @param text a name; case, accents, hyphens and spaces do not matter
   * @return none, one, or several to choose from
   */
  public List<Species> find(String text) {
    Species exact = byKey.get(text);
    return exact != null
        ? List.of(exact)
        : List.copyOf(byName.getOrDefault(WoodName.plain(text), Set.of()));
  }

  /**
   * Keys of woods whose names are close to a text, at most three; the one that looks the same comes
   * first when the text holds letters of another alphabet.
   */
  public List<String> suggest(String text) {
    List<Species> twins = lookAlikes(text);
    if (!twins.isEmpty()) {
      return twins.stream().map(Species::key).toList();
    }
    List<String> keys = new ArrayList<>();
    for (String name : NearNames.of(WoodName.plain(text), byName.keySet())) {
      byName.get(name).forEach(species -> keys.add(species.key()));
    }
    return keys.stream().distinct().limit(3).toList();
  }

  /** Woods whose name looks like a text that is written with letters of another alphabet. */
  public List<Species> lookAlikes(String text) {
    String latin = WoodName.inLatinLetters(text);
    return latin.equals(text) ? List.of() : find(latin);
  }

  /** The stand-in for a wood of which nothing is known; its words say so. */
  public Species generic() {
    return byKey.get(GENERIC);
  }

  /** The wood to compute with: the one a text means, or the generic one if that is not clear. */
  public Species woodFor(String text) {
    List<Species> found = find(text);
    return found.size() == 1 ? found.get(0) : generic();
  }
}
