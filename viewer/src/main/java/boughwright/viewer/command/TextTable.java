// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.VisibleText;
import java.util.ArrayList;
import java.util.List;

/** Cells in aligned columns, the first ones to the left and the others to the right. */
final class TextTable {
  private static final String GAP = "  ";

  private final int leftColumns;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * @param leftColumns how many columns hold words, aligned to the left
   */
  TextTable(int leftColumns) {
    this.leftColumns = leftColumns;
  }

  /** Adds a row; all rows have the same number of cells. */
  TextTable row(String... cells) {
    List<String> visible = new ArrayList<>();
    for (String cell : cells) {
      visible.add(VisibleText.of(cell));
    }
    rows.add(List.copyOf(visible));
    return this;
  }

  List<String> lines() {
    int[] widths = widths();
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private int[] widths() {
    int[] widths = new int[rows.isEmpty() ? 0 : rows.get(0).size()];
    for (List<String> row : rows) {
      for (int c = 0; c < widths.length; c++) {
        widths[c] = Math.max(widths[c], length(row.get(c)));
      }
    }
    return widths;
  }

  private String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < widths.length; c++) {
      String space = " ".repeat(widths[c] - length(row.get(c)));
      line.append(c == 0 ? "" : GAP);
      line.append(c < leftColumns ? row.get(c) + space : space + row.get(c));
    }
    return line.toString().stripTrailing();
  }

  private static int length(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
