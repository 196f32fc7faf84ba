// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Handover;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.EventObject;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.event.ListSelectionEvent;
import javax.swing.table.JTableHeader;

/**
 * The segments as a table that is edited like a spreadsheet: typing overwrites, F2 changes, Enter
 * goes down, Tab goes right. The rows that are picked are the picked segments.
 */
public final class SegmentTable extends JTable {
  private static final long serialVersionUID = 1L;
  private static final int ROW_HEIGHT = 36;

  private final transient Workspace workspace;
  private final transient ColumnRoom room;
  private transient Runnable columnsChanged = () -> {};
  private boolean following;

  public SegmentTable(Workspace workspace, Shape shape) {
    super(new SegmentTableModel(workspace, shape));
    this.workspace = workspace;
    Controls.named(this, "measure.table", "Segments");
    setCellSelectionEnabled(true);
    setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
    setAutoResizeMode(AUTO_RESIZE_ALL_COLUMNS);
    setSurrendersFocusOnKeystroke(true);
    putClientProperty("terminateEditOnFocusLost", true);
    getTableHeader().setReorderingAllowed(false);
    room = new ColumnRoom(this, () -> columnsChanged.run());
    setDefaultRenderer(Object.class, new CellText(this));
    setDefaultEditor(Object.class, editor());
    dress();
    new TableKeys(this).bind();
    workspace.listen(this::heard);
    follow();
  }

  private DefaultCellEditor editor() {
    JTextField field = new JTextField();
    Controls.named(field, "measure.table.cell", "Cell");
    field.setFocusTraversalKeysEnabled(false);
    goesOn(field, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "selectNextRowCell");
    goesOn(
        field,
        KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.SHIFT_DOWN_MASK),
        "selectPreviousRowCell");
    goesOn(field, KeyStroke.getKeyStroke(KeyEvent.VK_TAB, 0), "selectNextColumnCell");
    goesOn(
        field,
        KeyStroke.getKeyStroke(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK),
        "selectPreviousColumnCell");
    DefaultCellEditor editor = new DefaultCellEditor(field);
    editor.setClickCountToStart(2);
    return editor;
  }

  /** A key in a cell that is edited takes what is typed and goes on as in the table. */
  private void goesOn(JTextField field, KeyStroke key, String action) {
    field.getInputMap().put(key, action);
    field
        .getActionMap()
        .put(
            action,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                if (isEditing()) {
                  getCellEditor().stopCellEditing();
                }
                SegmentTable.this.run(action);
                Handover.to(SegmentTable.this);
              }
            });
  }

  SegmentTableModel cells() {
    return (SegmentTableModel) getModel();
  }

  /** Which columns are shown. */
  ColumnRoom room() {
    return room;
  }

  /** Asks to be told when other columns are shown. */
  void onColumns(Runnable listener) {
    columnsChanged = listener;
    listener.run();
  }

  private void dress() {
    setRowHeight(Theme.px(ROW_HEIGHT));
    room.dress();
    getTableHeader().setFont(Theme.small());
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (room != null) {
      dress();
    }
  }

  private void heard(Topic topic) {
    switch (topic) {
      case DOCUMENT -> refresh();
      case SELECTION -> follow();
      case UNITS -> {
        for (int i = 0; i < getColumnCount(); i++) {
          getColumnModel().getColumn(i).setHeaderValue(cells().getColumnName(i));
        }
        getTableHeader().repaint();
        repaint();
      }
      default -> {}
    }
  }

  private void refresh() {
    int column = Math.max(0, getColumnModel().getSelectionModel().getLeadSelectionIndex());
    following = true;
    boolean others = cells().refresh();
    following = false;
    if (others) {
      showPicked(column);
    }
  }

  /** Shows the segments that were picked elsewhere. */
  private void follow() {
    if (!following && !picked().equals(workspace.selection().segments())) {
      showPicked(Math.max(0, getColumnModel().getSelectionModel().getLeadSelectionIndex()));
    }
  }

  private void showPicked(int column) {
    following = true;
    ListSelectionModel picks = getSelectionModel();
    picks.setValueIsAdjusting(true);
    clearSelection();
    int last = -1;
    for (String id : workspace.selection().segments()) {
      int row = cells().rows().rowOf(id);
      if (row >= 0) {
        picks.addSelectionInterval(row, row);
        last = row;
      }
    }
    picks.setValueIsAdjusting(false);
    if (last >= 0) {
      getColumnModel().getSelectionModel().setSelectionInterval(column, column);
      scrollRectToVisible(getCellRect(last, column, true));
    }
    following = false;
  }

  private List<String> picked() {
    List<String> ids = new ArrayList<>();
    for (int row : getSelectedRows()) {
      ids.add(cells().rows().id(row));
    }
    return ids;
  }

  @Override
  public void valueChanged(ListSelectionEvent event) {
    super.valueChanged(event);
    if (workspace != null && !following && !event.getValueIsAdjusting()) {
      following = true;
      workspace.select(new Selection(picked()));
      following = false;
    }
  }

  @Override
  public boolean editCellAt(int row, int column, EventObject event) {
    boolean typed = event instanceof KeyEvent;
    if (typed && !writes((KeyEvent) event) || !super.editCellAt(row, column, event)) {
      return false;
    }
    if (getEditorComponent() instanceof JTextField field) {
      String heading = SegmentTableModel.column(column).title();
      field.getAccessibleContext().setAccessibleName(cells().rows().id(row) + ", " + heading);
      field.setFont(Theme.text());
      if (typed) {
        field.setText("");
      } else {
        SwingUtilities.invokeLater(field::selectAll);
      }
    }
    return true;
  }

  private static boolean writes(KeyEvent event) {
    char sign = event.getKeyChar();
    return !event.isControlDown()
        && !event.isAltDown()
        && !event.isMetaDown()
        && sign != KeyEvent.CHAR_UNDEFINED
        && !Character.isISOControl(sign);
  }

  @Override
  public Component prepareEditor(javax.swing.table.TableCellEditor editor, int row, int column) {
    Component field = super.prepareEditor(editor, row, column);
    field.setFont(Theme.text());
    return field;
  }

  @Override
  protected JTableHeader createDefaultTableHeader() {
    return new JTableHeader(getColumnModel()) {
      private static final long serialVersionUID = 1L;

      @Override
      public Dimension getPreferredSize() {
        return new Dimension(columnModel.getTotalColumnWidth(), super.getPreferredSize().height);
      }

      @Override
      public String getToolTipText(MouseEvent event) {
        int column = columnAtPoint(event.getPoint());
        return column < 0 ? null : SegmentTableModel.column(column).tip();
      }
    };
  }

  void say(Notice notice) {
    workspace.say(notice);
  }

  /** Does what a key of the table does. */
  private void run(String action) {
    getActionMap().get(action).actionPerformed(new ActionEvent(this, 0, action));
  }
}
