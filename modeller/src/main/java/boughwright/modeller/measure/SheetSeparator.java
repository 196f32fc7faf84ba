// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Finds out what separates the cells of a sheet. */
final class SheetSeparator {
  private static final Map<Character, String> NAMES =
      Map.of(',', "commas", ';', "semicolons", '\t', "tabs");

  /** Fewer headings than these do not make a tape sheet. */
  private static final int FEWEST_HEADINGS = 2;

  private SheetSeparator() {}

  static char of(SheetPreamble preamble, SheetProblems problems) throws InputException {
    if (preamble.separator().isPresent()) {
      return named(preamble.separator().get(), problems);
    }
    String heading = preamble.table().lines().findFirst().orElse("");
    char best = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (known(heading, candidate) > known(heading, best)) {
        best = candidate;
      }
    }
    if (known(heading, best) < FEWEST_HEADINGS) {
      throw problems.stop(
          problems.place(preamble.lines() + 1, ""),
          "no-headings",
          "the first row holds no headings of a tape sheet",
          "Begin with a row such as segment,parent,kind,azimuth_deg,elevation_deg,length_mm,"
              + "caliper_start_mm,caliper_end_mm");
    }
    say(best, problems);
    return best;
  }

  private static char named(String text, SheetProblems problems) throws InputException {
    if (text.length() == 1 && NAMES.containsKey(text.charAt(0))) {
      say(text.charAt(0), problems);
      return text.charAt(0);
    }
    throw problems.stop(
        problems.place(1, "sep="),
        "unknown-separator",
        "\"" + text + "\" is not a separator that is read here",
        "Separate cells with a comma, a semicolon or a tab");
  }

  private static void say(char separator, SheetProblems problems) {
    if (separator != ',') {
      problems.warn(
          Place.of(problems.source()),
          "separator",
          "the cells are separated by " + NAMES.get(separator),
          "Nothing to do if the tree looks right");
    }
  }

  private static long known(String heading, char separator) {
    List<String> cells =
        Arrays.stream(heading.split(String.valueOf(separator), SheetLimits.COLUMNS + 1))
            .limit(SheetLimits.COLUMNS)
            .map(cell -> cell.strip().replaceAll("^\"|\"$", "").strip())
            .toList();
    return SheetHeader.known(cells);
  }
}
