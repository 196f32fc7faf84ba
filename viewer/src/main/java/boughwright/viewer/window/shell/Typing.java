// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import java.awt.Component;
import java.awt.Window;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** What is typed at the moment counts too, although nobody has left its field yet. */
final class Typing {
  private Typing() {}

  /** Commits it as leaving the field does; the keyboard stays where it is. */
  static void commit(Window window) {
    Component owner = window.getMostRecentFocusOwner();
    JTable table =
        owner instanceof JTable itself
            ? itself
            : (JTable) SwingUtilities.getAncestorOfClass(JTable.class, owner);
    if (table != null && table.isEditing()) {
      table.getCellEditor().stopCellEditing();
    } else if (owner instanceof JTextComponent field && field.isEditable()) {
      tell(field, FocusEvent.FOCUS_LOST);
      tell(field, FocusEvent.FOCUS_GAINED);
    }
  }

  private static void tell(JTextComponent field, int what) {
    FocusEvent event = new FocusEvent(field, what);
    for (FocusListener listener : field.getFocusListeners()) {
      if (what == FocusEvent.FOCUS_LOST) {
        listener.focusLost(event);
      } else {
        listener.focusGained(event);
      }
    }
  }
}
