// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import java.util.ArrayList;
import java.util.List;

/** Which figures nobody published for a wood, or for what stands in for it. */
final class MissingFigures {
  private MissingFigures() {}

  static List<String> of(Species species) {
    List<String> missing = new ArrayList<>();
    add(missing, species.mor().isEmpty(), "modulus of rupture");
    add(missing, species.crushing().isEmpty(), "crushing strength");
    add(missing, species.shear().isEmpty(), "shear strength");
    add(missing, species.tensionPerp().isEmpty(), "tension across the grain");
    add(missing, species.compressionPerp().isEmpty(), "compression across the grain");
    add(missing, species.workToMaxLoad().isEmpty(), "work to the greatest load");
    add(missing, species.density().isEmpty(), "density");
    add(missing, species.spread().isEmpty(), "a spread of its own");
    return missing;
  }

  private static void add(List<String> missing, boolean absent, String words) {
    if (absent) {
      missing.add(words);
    }
  }

  /** One sentence. */
  static String words(Species species) {
    List<String> missing = of(species);
    String failing =
        " No one has published the strain at which fresh branches of it crack; that is judged"
            + " from other woods.";
    return (missing.isEmpty()
            ? "No figure of the table is missing."
            : "Missing here: " + String.join(", ", missing) + "; those of other woods are taken.")
        + failing;
  }
}
