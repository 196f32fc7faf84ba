// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.Place;
import boughwright.modeller.units.LengthUnit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The headings of a sheet: which column stands where, and in which unit. */
final class SheetHeader {
  /** Longer than every heading there is, with room for spaces. */
  private static final int LONGEST = 60;

  private final Map<SheetColumn, Heading> headings = new EnumMap<>(SheetColumn.class);
  private final int width;

  /**
   * One heading.
   *
   * @param index which cell of a row, from 0
   * @param text as the person wrote it
   * @param unit unit of a column of lengths
   */
  private record Heading(int index, String text, Optional<LengthUnit> unit) {}

  private SheetHeader(int width) {
    this.width = width;
  }

  /** How many of some cells are headings of a tape sheet, whatever their units. */
  static long known(List<String> cells) {
    return cells.stream().filter(cell -> SheetColumn.of(plain(cell)).isPresent()).count();
  }

  static SheetHeader of(List<String> cells, int line, SheetProblems problems) {
    int width = cells.size();
    while (width > 0 && cells.get(width - 1).isBlank()) {
      width--;
    }
    SheetHeader header = new SheetHeader(width);
    if (width > SheetLimits.COLUMNS) {
      problems.fault(
          problems.place(line, "heading"),
          "too-many-columns",
          "there are " + width + " columns",
          "Keep at most " + SheetLimits.COLUMNS);
      return header;
    }
    for (int i = 0; i < width; i++) {
      header.add(i, cells.get(i).strip(), problems.place(line, "column " + (i + 1)), problems);
    }
    for (SheetColumn column : SheetColumn.values()) {
      if (column.isRequired() && !header.headings.containsKey(column)) {
        problems.fault(
            problems.place(line, "heading"),
            "missing-column",
            "there is no column " + column.example(),
            "Add it; the tape sheet template shows every column");
      }
    }
    return header;
  }

  private void add(int index, String text, Place place, SheetProblems problems) {
    Optional<SheetColumn> found = SheetColumn.of(plain(text));
    if (found.isEmpty()) {
      String known =
          Arrays.stream(SheetColumn.values())
              .map(SheetColumn::example)
              .collect(Collectors.joining(", "));
      problems.warn(
          place,
          "unknown-column",
          "the heading \"" + SheetLimits.shown(text) + "\" is not known, its cells are left out",
          "Known are " + known);
      return;
    }
    SheetColumn column = found.get();
    if (headings.containsKey(column)) {
      problems.fault(
          place,
          "duplicate-column",
          "\"" + SheetLimits.shown(text) + "\" is the second column for " + column.title(),
          "Keep one of them");
      return;
    }
    headings.put(column, new Heading(index, text, unit(column, text, place, problems)));
  }

  private static Optional<LengthUnit> unit(
      SheetColumn column, String text, Place place, SheetProblems problems) {
    if (!column.hasUnit()) {
      return Optional.empty();
    }
    String heading = plain(text);
    String suffix =
        heading.equals(column.title()) ? "" : heading.substring(column.title().length() + 1);
    boolean angle = column.measure() == SheetColumn.Measure.ANGLE;
    Optional<LengthUnit> unit = angle ? Optional.empty() : LengthUnit.named(suffix);
    if (suffix.isEmpty()) {
      problems.fault(
          place,
          "no-unit",
          "the heading \"" + text + "\" has no unit, and units are not guessed",
          "Write the unit into the heading, such as " + column.example());
    } else if (angle ? !suffix.equals("deg") : unit.isEmpty()) {
      problems.fault(
          place,
          "unknown-unit",
          "the unit in the heading \"" + SheetLimits.shown(text) + "\" is not known",
          angle ? "Measure in degrees: " + column.example() : "Use _mm, _cm, _m or _in");
    }
    return unit;
  }

  private static String plain(String heading) {
    if (heading.length() > LONGEST) {
      return heading;
    }
    return heading
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s()\\[\\]-]+", "_")
        .replaceAll("^_+|_+$", "");
  }

  int width() {
    return width;
  }

  boolean has(SheetColumn column) {
    return headings.containsKey(column);
  }

  int index(SheetColumn column) {
    return headings.get(column).index();
  }

  /** The heading as the person wrote it; as the template has it where the column is missing. */
  String text(SheetColumn column) {
    return has(column) ? headings.get(column).text() : column.example();
  }

  LengthUnit unit(SheetColumn column) {
    return headings.get(column).unit().orElseThrow();
  }
}
