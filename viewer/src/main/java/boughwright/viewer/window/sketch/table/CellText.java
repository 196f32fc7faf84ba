// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;

/** Paints a cell: numbers at the right, names set in by generation. */
final class CellText extends DefaultTableCellRenderer {
  private static final long serialVersionUID = 1L;
  private static final int INDENT = 16;
  private static final int MOST_INDENTS = 6;
  private static final int ROOM = 8;

  private final SegmentTable table;

  CellText(SegmentTable table) {
    this.table = table;
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable in, Object value, boolean picked, boolean focus, int row, int column) {
    super.getTableCellRendererComponent(in, value, picked, focus, row, column);
    SegmentColumn what = SegmentTableModel.column(column);
    if (!picked && in.isRowSelected(row)) {
      setBackground(Theme.colour(Shade.WASH));
    } else if (!picked) {
      setBackground(in.getBackground());
    }
    setFont(what == SegmentColumn.ID ? Theme.strong() : Theme.text());
    setHorizontalAlignment(what.isNumber() ? SwingConstants.RIGHT : SwingConstants.LEFT);
    int generation = table.cells().rows().get(row).generation();
    int indent =
        what == SegmentColumn.ID ? Theme.px(INDENT) * Math.min(MOST_INDENTS, generation) : 0;
    setBorder(
        BorderFactory.createCompoundBorder(
            getBorder(),
            BorderFactory.createEmptyBorder(0, Theme.px(ROOM) + indent, 0, Theme.px(ROOM))));
    boolean name = what == SegmentColumn.ID || what == SegmentColumn.PARENT;
    setToolTipText(name ? String.valueOf(value) : null);
    getAccessibleContext()
        .setAccessibleName(table.cells().rows().id(row) + ", " + what.title() + ": " + value);
    return this;
  }
}
