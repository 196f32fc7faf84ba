// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.viewer.window.look.Theme;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTable;
import javax.swing.table.TableColumn;

/**
 * Shows as many columns as can be read in the room there is, the names always; where they are too
 * many they take turns. Whoever goes to a column by key finds it shown.
 */
final class ColumnRoom {
  private final JTable table;
  private final Runnable changed;
  private List<List<Integer>> turns = List.of();
  private int shown;
  private int room = Integer.MAX_VALUE;

  /**
   * @param changed told when other columns are shown, or take turns in another way
   */
  ColumnRoom(JTable table, Runnable changed) {
    this.table = table;
    this.changed = changed;
    table.getColumnModel().getSelectionModel().addListSelectionListener(event -> follow(table));
    table.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            fit(table.getWidth());
          }
        });
  }

  private static int least(int column) {
    return Theme.px(SegmentTableModel.column(column).least());
  }

  /** Deals the columns out anew for some width, as after the text size has changed. */
  void dress() {
    deal();
    apply();
  }

  private void fit(int width) {
    if (width != room && width > 0) {
      room = width;
      deal();
      apply();
    }
  }

  private void deal() {
    List<List<Integer>> all = new ArrayList<>();
    List<Integer> turn = new ArrayList<>();
    int wide = least(0);
    for (int column = 1; column < table.getColumnCount(); column++) {
      if (wide + least(column) > room && !turn.isEmpty()) {
        all.add(turn);
        turn = new ArrayList<>();
        wide = least(0);
      }
      turn.add(column);
      wide += least(column);
    }
    all.add(turn);
    turns = all;
    shown = Math.max(0, turnOf(lead()));
  }

  private int lead() {
    return table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
  }

  private int turnOf(int column) {
    for (int n = 0; n < turns.size(); n++) {
      if (turns.get(n).contains(column)) {
        return n;
      }
    }
    return -1;
  }

  private void follow(JTable in) {
    int turn = turnOf(lead());
    if (turn >= 0 && turn != shown && in.getColumnCount() > 0) {
      shown = turn;
      apply();
    }
  }

  private void apply() {
    for (int i = 0; i < table.getColumnCount(); i++) {
      TableColumn column = table.getColumnModel().getColumn(i);
      boolean here = i == 0 || turns.get(shown).contains(i);
      // from nothing to something the greatest comes first, else the least would not be taken
      column.setMaxWidth(here ? Integer.MAX_VALUE : 0);
      column.setMinWidth(here ? least(i) : 0);
      column.setPreferredWidth(here ? Theme.px(SegmentTableModel.column(i).width()) : 0);
    }
    table.doLayout();
    table.getTableHeader().repaint();
    table.repaint();
    changed.run();
  }

  /** Whether the columns take turns. */
  boolean isFolded() {
    return turns.size() > 1;
  }

  /** Which columns are shown, such as {@code Columns 1 to 4 of 11}. */
  String words() {
    List<Integer> here = turns.get(shown);
    return "Columns "
        + here.get(0)
        + " to "
        + here.get(here.size() - 1)
        + " of "
        + (table.getColumnCount() - 1);
  }

  /** Shows the next columns, after the last the first again, and goes to the first of them. */
  void next() {
    shown = (shown + 1) % turns.size();
    int row = Math.max(0, table.getSelectionModel().getLeadSelectionIndex());
    if (table.getRowCount() > 0) {
      table.changeSelection(row, turns.get(shown).get(0), false, false);
    }
    apply();
  }
}
