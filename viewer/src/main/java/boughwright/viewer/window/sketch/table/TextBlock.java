// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Cells as spreadsheets exchange them: rows by line ends, cells by tabs, a cell with one of those
 * or a quotation mark in quotation marks.
 *
 * @param rows rows of cells, not all of the same width
 */
record TextBlock(List<List<String>> rows) {
  TextBlock {
    rows = rows.stream().map(List::copyOf).toList();
  }

  static TextBlock of(String text) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    String plain = text.replace("\r\n", "\n").replace('\r', '\n');
    for (int i = 0; i < plain.length(); i++) {
      char sign = plain.charAt(i);
      if (quoted && sign == '"') {
        boolean doubled = i + 1 < plain.length() && plain.charAt(i + 1) == '"';
        if (doubled) {
          cell.append('"');
          i++;
        } else {
          quoted = false;
        }
      } else if (!quoted && sign == '"' && cell.isEmpty()) {
        quoted = true;
      } else if (!quoted && (sign == '\t' || sign == '\n')) {
        row.add(cell.toString());
        cell.setLength(0);
        if (sign == '\n') {
          rows.add(row);
          row = new ArrayList<>();
        }
      } else {
        cell.append(sign);
      }
    }
    if (!cell.isEmpty() || !row.isEmpty()) {
      row.add(cell.toString());
      rows.add(row);
    }
    return new TextBlock(rows);
  }

  String text() {
    return rows.stream()
        .map(row -> row.stream().map(TextBlock::written).collect(Collectors.joining("\t")))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static String written(String cell) {
    boolean plain = cell.chars().noneMatch(sign -> sign == '\t' || sign == '\n' || sign == '"');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  boolean isOneCell() {
    return rows.size() == 1 && rows.get(0).size() == 1;
  }

  int width() {
    return rows.stream().mapToInt(List::size).max().orElse(0);
  }
}
