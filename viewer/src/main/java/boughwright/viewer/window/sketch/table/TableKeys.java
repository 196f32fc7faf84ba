// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.work.Notice;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;

/** What spreadsheet keys do in the table: copy, paste, fill down, clear. */
final class TableKeys {
  static final String COPY = "measure.copy";
  static final String PASTE = "measure.paste";
  static final String FILL = "measure.fill";
  static final String CLEAR = "measure.clear";

  private final SegmentTable table;

  TableKeys(SegmentTable table) {
    this.table = table;
  }

  void bind() {
    on(COPY, Keys.menu(KeyEvent.VK_C), this::copy);
    on(PASTE, Keys.menu(KeyEvent.VK_V), this::paste);
    on(FILL, Keys.menu(KeyEvent.VK_D), this::fill);
    on(CLEAR, Keys.plain(KeyEvent.VK_BACK_SPACE), this::clear);
  }

  private void on(String name, KeyStroke key, Runnable run) {
    table.getInputMap(javax.swing.JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, name);
    table
        .getActionMap()
        .put(
            name,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                run.run();
              }
            });
  }

  private void copy() {
    List<List<String>> rows = new ArrayList<>();
    for (int row : table.getSelectedRows()) {
      List<String> cells = new ArrayList<>();
      for (int column : table.getSelectedColumns()) {
        cells.add(table.cells().getValueAt(row, column));
      }
      rows.add(cells);
    }
    if (!rows.isEmpty()) {
      StringSelection text = new StringSelection(new TextBlock(rows).text());
      Toolkit.getDefaultToolkit().getSystemClipboard().setContents(text, text);
    }
  }

  private void paste() {
    clipboard().map(TextBlock::of).filter(block -> !block.rows().isEmpty()).ifPresent(this::paste);
  }

  private static Optional<String> clipboard() {
    try {
      return Optional.ofNullable(
          (String)
              Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
    } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
      return Optional.empty();
    }
  }

  /** Puts a block in with its corner at the picked cell; one cell fills all that are picked. */
  void paste(TextBlock block) {
    int[] rows = table.getSelectedRows();
    int[] columns = table.getSelectedColumns();
    if (rows.length == 0 || columns.length == 0) {
      return;
    }
    List<SegmentTableModel.Cell> cells = new ArrayList<>();
    if (block.isOneCell()) {
      String text = block.rows().get(0).get(0);
      for (int row : rows) {
        for (int column : columns) {
          cells.add(new SegmentTableModel.Cell(row, column, text));
        }
      }
    } else if (fits(block, rows[0], columns[0])) {
      for (int r = 0; r < block.rows().size(); r++) {
        List<String> texts = block.rows().get(r);
        for (int c = 0; c < texts.size(); c++) {
          cells.add(new SegmentTableModel.Cell(rows[0] + r, columns[0] + c, texts.get(c)));
        }
      }
    }
    table.cells().set(cells, "Paste " + block.rows().size() + " by " + block.width() + " cells");
  }

  private boolean fits(TextBlock block, int row, int column) {
    int rowsLeft = table.getRowCount() - row;
    int columnsLeft = table.getColumnCount() - column;
    if (block.rows().size() <= rowsLeft && block.width() <= columnsLeft) {
      return true;
    }
    table.say(
        new Notice(
            Notice.Kind.FAULT,
            String.format(
                java.util.Locale.ROOT,
                "Nothing was pasted: %d by %d cells do not fit into the %d by %d from here on. Add"
                    + " segments first, or start further up and left",
                block.rows().size(),
                block.width(),
                rowsLeft,
                columnsLeft)));
    return false;
  }

  /** Puts the texts of the first picked row into the rows below it. */
  private void fill() {
    int[] rows = table.getSelectedRows();
    List<SegmentTableModel.Cell> cells = new ArrayList<>();
    for (int column : table.getSelectedColumns()) {
      for (int i = 1; i < rows.length; i++) {
        String text = table.cells().getValueAt(rows[0], column);
        cells.add(new SegmentTableModel.Cell(rows[i], column, text));
      }
    }
    table.cells().set(cells, "Fill down");
  }

  /** Empties the picked cells that may be empty. */
  private void clear() {
    List<SegmentTableModel.Cell> cells = new ArrayList<>();
    for (int column : table.getSelectedColumns()) {
      if (SegmentTableModel.column(column).isOptional()) {
        for (int row : table.getSelectedRows()) {
          cells.add(new SegmentTableModel.Cell(row, column, ""));
        }
      }
    }
    if (cells.isEmpty()) {
      table.say(
          new Notice(
              Notice.Kind.CAUTION,
              "Only bark and live can be emptied. Delete takes whole segments out"));
    }
    table.cells().set(cells, "Clear cells");
  }
}
