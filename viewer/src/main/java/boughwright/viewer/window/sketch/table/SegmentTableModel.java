// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.modeller.edit.Edit;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.table.AbstractTableModel;

/** The segments of the workspace's tree as cells of text. */
final class SegmentTableModel extends AbstractTableModel {
  private static final long serialVersionUID = 1L;
  private static final SegmentColumn[] COLUMNS = SegmentColumn.values();

  private final transient Workspace workspace;
  private final transient Shape shape;
  private transient TreeRows rows;

  /**
   * A text for a cell.
   *
   * @param row row of the model
   * @param column column of the model
   */
  record Cell(int row, int column, String text) {}

  SegmentTableModel(Workspace workspace, Shape shape) {
    this.workspace = workspace;
    this.shape = shape;
    rows = new TreeRows(shape.skeleton());
  }

  TreeRows rows() {
    return rows;
  }

  /** Takes the tree as it is now; tells whether other segments stand in the rows. */
  boolean refresh() {
    if (rows.skeleton() == shape.skeleton()) {
      return false;
    }
    TreeRows next = new TreeRows(shape.skeleton());
    boolean same = next.hasRowsOf(rows);
    rows = next;
    if (same) {
      fireTableRowsUpdated(0, Math.max(0, rows.size() - 1));
    } else {
      fireTableDataChanged();
    }
    return !same;
  }

  @Override
  public int getRowCount() {
    return rows.size();
  }

  @Override
  public int getColumnCount() {
    return COLUMNS.length;
  }

  static SegmentColumn column(int column) {
    return COLUMNS[column];
  }

  @Override
  public String getColumnName(int column) {
    return COLUMNS[column].heading(unit());
  }

  private LengthUnit unit() {
    return workspace.units().length();
  }

  @Override
  public boolean isCellEditable(int row, int column) {
    return true;
  }

  @Override
  public String getValueAt(int row, int column) {
    return COLUMNS[column].text(rows.skeleton(), rows.get(row).segment(), unit());
  }

  @Override
  public void setValueAt(Object value, int row, int column) {
    set(List.of(new Cell(row, column, String.valueOf(value))), "");
  }

  /**
   * Sets cells in one step that can be undone; all of them or none. Cells that show the same text
   * already are left alone.
   *
   * @param name what it does; empty to name it by its one cell
   * @return whether nothing was refused
   */
  boolean set(List<Cell> cells, String name) {
    List<RowChange> changes = changes(cells);
    if (changes.isEmpty()) {
      return true;
    }
    return workspace.edit(
        new Edit(name.isEmpty() ? name(changes.get(0)) : name, document -> of(document, changes)));
  }

  private static Document of(Document document, List<RowChange> changes) throws InputException {
    Document changed = document;
    for (RowChange change : changes) {
      changed = change.of(changed);
    }
    return changed;
  }

  private static String name(RowChange change) {
    SegmentColumn column = change.cells().keySet().iterator().next();
    return "Set " + column.title().toLowerCase(java.util.Locale.ROOT) + " of " + change.id();
  }

  private List<RowChange> changes(List<Cell> cells) {
    Map<Integer, Map<SegmentColumn, String>> byRow = new LinkedHashMap<>();
    for (Cell cell : cells) {
      if (!cell.text().strip().equals(getValueAt(cell.row(), cell.column()))) {
        byRow
            .computeIfAbsent(cell.row(), row -> new LinkedHashMap<>())
            .put(COLUMNS[cell.column()], cell.text());
      }
    }
    List<RowChange> changes = new ArrayList<>();
    byRow.forEach((row, texts) -> changes.add(new RowChange(rows.id(row), texts, unit())));
    return changes;
  }
}
