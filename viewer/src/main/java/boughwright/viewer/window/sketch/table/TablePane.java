// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Handover;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;

/** The table of segments with what its keys do, and why a cell was refused. */
public final class TablePane {
  private static final String KEYS =
      "Type over a cell, F2 changes it. Ctrl+C, Ctrl+V from and to a spreadsheet, Ctrl+D fills down,"
          + " Delete takes segments out.";

  private final Workspace workspace;
  private static final int LEAST_HIGH = 28;

  /** So high the pane has room for what its keys do [user pixels at 100 %]. */
  private static final int HIGH = 300;

  private final SegmentTable table;
  private final JButton columns = Controls.button("");
  private final Prose told = new Prose(KEYS, Shade.QUIET);
  private final JPanel panel =
      new JPanel(
          new MigLayout(
              "wrap 1, fill, insets 0, gapy 8, hidemode 3",
              "[grow,fill,0:pref]",
              "[][grow,fill][]"));

  public TablePane(Workspace workspace, Shape shape) {
    this.workspace = workspace;
    table = new SegmentTable(workspace, shape);
    told.setName("measure.table.told");
    panel.setOpaque(false);
    JScrollPane pane =
        new JScrollPane(
            table,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    Controls.named(pane, "measure.table.pane", "Segments");
    Controls.named(columns, "measure.table.columns", "Show the next columns");
    columns.setMnemonic('x');
    columns.setToolTipText("Not all columns have room beside the tree; the keys go to all of them");
    columns.addActionListener(event -> goOn());
    table.onColumns(this::tellColumns);
    panel.add(columns, "cell 0 0, wmin 0");
    panel.add(pane, "cell 0 1, wmin 0, hmin " + Theme.length(LEAST_HIGH));
    panel.add(told, "cell 0 2, wmin 0, growx");
    panel.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            fit();
          }
        });
    workspace.listen(this::heard);
  }

  /** Where there is little height the rows have it; Help tells the keys as well. */
  private void fit() {
    told.setVisible(!told.getText().equals(KEYS) || panel.getHeight() > Theme.px(HIGH));
  }

  private void goOn() {
    table.room().next();
    Handover.to(table);
  }

  private void tellColumns() {
    columns.setVisible(table.room().isFolded());
    columns.setText(table.room().words() + ": show the next");
  }

  public JComponent component() {
    return panel;
  }

  /** Puts the keyboard on the table. */
  public void focus() {
    Handover.to(table);
    if (table.getSelectedRow() < 0 && table.getRowCount() > 0) {
      table.changeSelection(0, 0, false, false);
    }
  }

  private void heard(Topic topic) {
    if (topic == Topic.DOCUMENT) {
      told.say(KEYS, Shade.QUIET);
      fit();
    }
    if (topic == Topic.NOTICE && panel.isShowing()) {
      workspace
          .notice()
          .filter(notice -> notice.kind() == Notice.Kind.FAULT)
          .ifPresent(notice -> told.say(notice.words(), Shade.FAULT));
      fit();
    }
  }
}
