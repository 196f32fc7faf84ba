// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.Place;
import boughwright.modeller.units.AngleText;
import boughwright.modeller.units.DecimalMark;
import boughwright.modeller.units.DecimalText;
import boughwright.modeller.units.LengthText;
import boughwright.modeller.units.LengthUnit;
import boughwright.modeller.units.UnreadableException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Reads single cells, and collects what is wrong with them. Mutable; lives for one sheet. */
final class SheetCells {
  private final SheetHeader header;
  private final DecimalMark mark;
  private final SheetProblems problems;
  private int unitsRepeated;

  SheetCells(SheetTable table, SheetProblems problems) {
    this.header = table.header();
    this.problems = problems;
    this.mark = DecimalMark.of(numbers(table));
    if (mark == DecimalMark.COMMA) {
      problems.warn(
          Place.of(problems.source()),
          "decimal-comma",
          "numbers are read with a decimal comma: 12,5 is twelve and a half",
          "Nothing to do if the tree looks right");
    }
  }

  private static List<String> numbers(SheetTable table) {
    List<String> numbers = new ArrayList<>();
    for (SheetColumn column : SheetColumn.values()) {
      if (column.measure() != SheetColumn.Measure.TEXT && table.header().has(column)) {
        int index = table.header().index(column);
        table.rows().forEach(row -> numbers.add(row.cells().get(index)));
      }
    }
    return numbers;
  }

  /** The text of a cell; empty if there is none, or no such column. */
  Optional<String> text(SheetRow row, SheetColumn column) {
    return Optional.of(column)
        .filter(header::has)
        .map(c -> row.cells().get(header.index(c)))
        .filter(cell -> !cell.isEmpty());
  }

  /** The text of a cell that must not be empty; a fault and empty if it is. */
  Optional<String> required(SheetRow row, SheetColumn column) {
    Optional<String> text = text(row, column);
    if (text.isEmpty()) {
      fault(row, column, "empty-cell", "the cell is empty", "Measure it and fill it in");
    }
    return text;
  }

  /** A length [m] between two bounds; empty if the cell is, or after a fault. */
  OptionalDouble length(SheetRow row, SheetColumn column, double least, double most) {
    Optional<String> text = text(row, column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      LengthText.Reading reading = LengthText.read(text.get(), header.unit(column), mark);
      reading.written().ifPresent(unit -> remark(row, column, text.get(), unit));
      if (reading.metres() >= least && reading.metres() <= most) {
        return OptionalDouble.of(reading.metres());
      }
      LengthUnit unit = header.unit(column);
      fault(
          row,
          column,
          "out-of-range",
          String.format(
              Locale.ROOT,
              "%s is not between %s and %s %s",
              SheetLimits.shown(text.get()),
              number(unit.fromMetres(least)),
              number(unit.fromMetres(most)),
              unit.symbol()),
          "Measure it again, or mend the unit in the heading");
    } catch (UnreadableException e) {
      problems.add(e.at(place(row, column)));
    }
    return OptionalDouble.empty();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4f", value).replaceAll("\\.?0+$", "");
  }

  private void remark(SheetRow row, SheetColumn column, String text, LengthUnit written) {
    LengthUnit unit = header.unit(column);
    if (written == unit) {
      unitsRepeated++;
    } else {
      problems.warn(
          place(row, column),
          "other-unit",
          SheetLimits.shown(text) + " is read in its own unit, under a heading in " + unit.symbol(),
          "Check that it was measured so");
    }
  }

  /** An angle [rad] whose size in degrees has a bound; empty if the cell is, or after a fault. */
  OptionalDouble angle(SheetRow row, SheetColumn column, double most) {
    Optional<String> text = text(row, column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      double degrees = AngleText.degrees(text.get(), mark);
      if (Math.abs(degrees) <= most) {
        return OptionalDouble.of(Math.toRadians(degrees));
      }
      fault(
          row,
          column,
          "out-of-range",
          SheetLimits.shown(text.get())
              + " is not between -"
              + number(most)
              + " and "
              + number(most),
          "Measure it again");
    } catch (UnreadableException e) {
      problems.add(e.at(place(row, column)));
    }
    return OptionalDouble.empty();
  }

  /** A number between 0 and 1; empty if the cell is, or after a fault. */
  OptionalDouble fraction(SheetRow row, SheetColumn column) {
    Optional<String> text = text(row, column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      double value = DecimalText.read(text.get(), mark).doubleValue();
      if (value >= 0 && value <= 1) {
        return OptionalDouble.of(value);
      }
      fault(
          row,
          column,
          "out-of-range",
          SheetLimits.shown(text.get()) + " is not between 0 and 1",
          "Write the fraction of the parent's length, such as 0.5 for half-way");
    } catch (UnreadableException e) {
      problems.add(e.at(place(row, column)));
    }
    return OptionalDouble.empty();
  }

  /** One of some words, in any case; empty if the cell is, or after a fault. */
  <T> Optional<T> choice(SheetRow row, SheetColumn column, Map<String, T> words) {
    Optional<String> text = text(row, column);
    Optional<T> value = text.map(word -> words.get(word.toLowerCase(Locale.ROOT)));
    if (text.isPresent() && value.isEmpty()) {
      String known = words.keySet().stream().sorted().collect(Collectors.joining(", "));
      fault(
          row,
          column,
          "unknown-word",
          "\"" + SheetLimits.shown(text.get()) + "\" is not known here",
          "Write one of: " + known);
    }
    return value;
  }

  void fault(SheetRow row, SheetColumn column, String kind, String found, String remedy) {
    problems.fault(place(row, column), kind, found, remedy);
  }

  Place place(SheetRow row, SheetColumn column) {
    String id = text(row, SheetColumn.SEGMENT).map(SheetLimits::shown).orElse("?");
    return problems.place(row.line(), "segment \"" + id + "\", column " + header.text(column));
  }

  /** Says once that units stood beside numbers as well as in the headings. */
  void sayRepeatedUnits() {
    if (unitsRepeated > 0) {
      problems.warn(
          Place.of(problems.source()),
          "unit-in-cell",
          unitsRepeated + " cells repeat the unit of their heading",
          "The heading is enough");
    }
  }
}
