// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Cuts the text of a sheet into headings and rows. Mutable; lives while the sheet is read. */
final class SheetTable {
  private final SheetProblems problems;
  private final List<SheetRow> rows = new ArrayList<>();
  private int lastLine;
  private SheetHeader header;
  private boolean headingsSound;
  private boolean complete = true;

  private SheetTable(int linesAbove, SheetProblems problems) {
    this.lastLine = linesAbove;
    this.problems = problems;
  }

  static SheetTable of(SheetPreamble preamble, SheetProblems problems) throws InputException {
    char separator = SheetSeparator.of(preamble, problems);
    SheetTable table = new SheetTable(preamble.lines(), problems);
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(separator)
            .setIgnoreSurroundingSpaces(true)
            .setCommentMarker('#')
            .get();
    try (CSVParser parser = CSVParser.parse(preamble.table(), format)) {
      table.read(parser, preamble.lines());
    } catch (UncheckedIOException | IOException e) {
      table.complete = false;
      problems.fault(
          problems.place(table.lastLine + 1, ""),
          "broken-quotes",
          "in the row that begins here a quoted cell is not closed, or text follows its closing"
              + " quote",
          "Double every quote inside a quoted cell, and close the cell");
    }
    return table;
  }

  private void read(CSVParser parser, int linesAbove) throws InputException {
    Iterator<CSVRecord> records = parser.iterator();
    boolean commented = false;
    while (records.hasNext()) {
      int end = linesAbove + (int) parser.getCurrentLineNumber();
      CSVRecord record = records.next();
      List<String> cells = record.stream().map(String::strip).toList();
      int line = end - cells.stream().mapToInt(SheetTable::lineBreaks).sum();
      lastLine = end;
      if (header == null) {
        int before = problems.faults();
        header = SheetHeader.of(cells, line, problems);
        headingsSound = problems.faults() == before;
      } else if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
        addRow(line, cells);
        commented |= record.hasComment();
      }
      if (rows.size() > SheetLimits.ROWS) {
        throw problems.stop(
            problems.place(line, ""),
            "too-many-rows",
            "a sheet may have " + SheetLimits.ROWS + " rows",
            "Measure fewer pieces; a straight twig is one");
      }
    }
    if (commented || parser.hasTrailerComment()) {
      problems.warn(
          Place.of(problems.source()),
          "comment-between-rows",
          "lines that begin with # below the headings are left out",
          "Put what concerns the whole tree above the headings");
    }
  }

  private void addRow(int line, List<String> cells) {
    int width = header.width();
    boolean over = cells.stream().skip(width).anyMatch(cell -> !cell.isEmpty());
    if (cells.size() < width || over) {
      complete = false;
      problems.fault(
          problems.place(line, "row \"" + SheetLimits.shown(cells.get(0)) + '"'),
          over ? "long-row" : "short-row",
          "it has " + cells.size() + " cells under " + width + " headings",
          over
              ? "If 12,5 is written with a comma, separate the cells with semicolons"
              : "Fill the row up, with empty cells where nothing was measured");
      return;
    }
    for (int i = 0; i < width; i++) {
      if (cells.get(i).length() > SheetLimits.CELL) {
        complete = false;
        problems.fault(
            problems.place(line, "column " + (i + 1)),
            "long-cell",
            "the cell has " + cells.get(i).length() + " characters",
            "Shorten it to " + SheetLimits.CELL + " characters");
        return;
      }
    }
    rows.add(new SheetRow(line, cells.subList(0, width)));
  }

  private static int lineBreaks(String cell) {
    return (int) cell.replace("\r\n", "\n").chars().filter(c -> c == '\n' || c == '\r').count();
  }

  SheetHeader header() {
    return header;
  }

  /** Whether every column that is needed is there, in a known unit. */
  boolean headingsSound() {
    return headingsSound;
  }

  /** Whether every row of the sheet is among the {@link #rows}. */
  boolean isComplete() {
    return complete;
  }

  List<SheetRow> rows() {
    return List.copyOf(rows);
  }
}
