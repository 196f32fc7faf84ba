// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Handover;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** The table of segments with what its keys do, and why a cell was refused. */
public final class TablePane {
  private static final String KEYS =
      "Type over a cell, F2 changes it. Ctrl+C, Ctrl+V from and to a spreadsheet, Ctrl+D fills down,"
          + " Delete takes segments out.";

  private final Workspace workspace;
  private final SegmentTable table;
  private final Prose told = new Prose(KEYS, Shade.QUIET);
  private final JPanel panel =
      new JPanel(
          new MigLayout("wrap 1, fill, insets 0, gapy 8", "[grow,fill,0:pref]", "[grow,fill][]"));

  public TablePane(Workspace workspace, Shape shape) {
    this.workspace = workspace;
    table = new SegmentTable(workspace, shape);
    told.setName("measure.table.told");
    panel.setOpaque(false);
    JScrollPane pane = new JScrollPane(table);
    Controls.named(pane, "measure.table.pane", "Segments");
    panel.add(pane, "wmin 0, hmin 120");
    panel.add(told, "wmin 0, growx");
    workspace.listen(this::heard);
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
    }
    if (topic == Topic.NOTICE && panel.isShowing()) {
      workspace
          .notice()
          .filter(notice -> notice.kind() == Notice.Kind.FAULT)
          .ifPresent(notice -> told.say(notice.words(), Shade.FAULT));
    }
  }
}
