// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.VisibleText;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Judges the names of segments as a sheet holds them: each one once, short, on one line. */
final class SheetIds {
  private static final Set<Integer> JOINERS = Set.of(0x200C, 0x200D);

  private final SheetProblems problems;
  private final Map<String, SheetRow> seen = new HashMap<>();
  private final Map<String, String> alike = new HashMap<>();

  SheetIds(SheetProblems problems) {
    this.problems = problems;
  }

  /** Whether some row has this name. */
  boolean has(String id) {
    return seen.containsKey(id);
  }

  /** The name of a row that looks the same as this one, if there is one. */
  Optional<String> like(String id) {
    return Optional.ofNullable(alike.get(look(id)));
  }

  void add(String id, SheetRow row) {
    String shown = '"' + SheetLimits.shown(id) + '"';
    String subject = "segment " + shown;
    SheetRow first = seen.putIfAbsent(id, row);
    alike.putIfAbsent(look(id), id);
    if (first != null) {
      problems.fault(
          problems.place(row.line(), subject),
          "duplicate-id",
          "the name " + shown + " stands in line " + first.line() + " already",
          "Give each segment a name of its own");
      return;
    }
    if (id.length() > SheetLimits.ID) {
      problems.fault(
          problems.place(row.line(), subject),
          "long-id",
          "the name has " + id.length() + " characters",
          "Use at most " + SheetLimits.ID);
    }
    if (id.codePoints().anyMatch(point -> Character.getType(point) == Character.CONTROL)) {
      problems.fault(
          problems.place(row.line(), subject),
          "control-character",
          "the name holds a line break or another control character",
          "Type the name again");
    }
  }

  private static boolean isInvisible(int point) {
    return VisibleText.isHidden(point) || JOINERS.contains(point);
  }

  /** What the eye sees of a name. */
  private static String look(String id) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(id, Normalizer.Form.NFKC)
        .codePoints()
        .filter(point -> !isInvisible(point))
        .forEach(out::appendCodePoint);
    return out.toString().toLowerCase(Locale.ROOT);
  }
}
