// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window;

import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.Icon;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;

/**
 * Finds words that have no room and would be cut off with three dots, as the screen paints them.
 */
final class Clipped {
  /** A word of so many letters is a name, and may be broken anywhere. */
  private static final int NAME = 20;

  private Clipped() {}

  /** What of a control is cut off, in words. */
  static List<String> words(Component part) {
    List<String> faults = new ArrayList<>();
    if (part instanceof JLabel label) {
      check(label, label.getText(), label.getIcon(), label.getIconTextGap(), faults);
    } else if (part instanceof AbstractButton button) {
      Icon icon = button.getIcon() != null ? button.getIcon() : boxOf(button);
      check(button, button.getText(), icon, button.getIconTextGap(), faults);
    } else if (part instanceof JTextArea area) {
      check(area, faults);
    } else if (part instanceof JTable table) {
      check(table, faults);
    } else if (part instanceof JList<?> list) {
      check(list, faults);
    } else if (part instanceof JComboBox<?> box) {
      check(box, faults);
    }
    return faults;
  }

  private static Icon boxOf(AbstractButton button) {
    return button instanceof javax.swing.JCheckBox
        ? javax.swing.UIManager.getIcon("CheckBox.icon")
        : null;
  }

  private static void check(
      JComponent part, String words, Icon icon, int gap, List<String> faults) {
    if (words == null || words.isBlank() || isTold(part.getToolTipText(), words)) {
      return;
    }
    Insets insets = part.getInsets();
    int room = part.getWidth() - insets.left - insets.right;
    if (words.startsWith("<html>")) {
      int wide = part.getPreferredSize().width;
      note(part, words, new int[] {wide, part.getWidth()}, faults);
      return;
    }
    Rectangle view = new Rectangle(insets.left, insets.top, room, part.getHeight());
    String painted =
        SwingUtilities.layoutCompoundLabel(
            part,
            part.getFontMetrics(part.getFont()),
            words,
            icon,
            JLabel.CENTER,
            JLabel.LEADING,
            JLabel.CENTER,
            JLabel.TRAILING,
            view,
            new Rectangle(),
            new Rectangle(),
            gap);
    if (!painted.equals(words)) {
      faults.add("\"" + words + "\" is painted \"" + painted + "\" in " + Layout.named(part));
    }
  }

  /** A name may be cut where a tip beside it tells all of it. */
  private static boolean isTold(String tip, String words) {
    return tip != null && tip.contains(words);
  }

  private static void note(JComponent part, String words, int[] wideAndRoom, List<String> faults) {
    if (wideAndRoom[0] > wideAndRoom[1] + 1) {
      faults.add(
          "\""
              + words
              + "\" needs "
              + wideAndRoom[0]
              + " of "
              + wideAndRoom[1]
              + " in "
              + Layout.named(part));
    }
  }

  /** Lines are broken between words, so only a word can be too long; and all lines must show. */
  private static void check(JTextArea area, List<String> faults) {
    FontMetrics metrics = area.getFontMetrics(area.getFont());
    int longest =
        Arrays.stream(area.getText().split("\\s+"))
            .filter(word -> word.length() < NAME)
            .mapToInt(metrics::stringWidth)
            .max()
            .orElse(0);
    note(area, area.getText(), new int[] {longest, area.getWidth()}, faults);
    if (area.getPreferredSize().height > area.getHeight() + 1) {
      faults.add(
          "\""
              + area.getText()
              + "\" is "
              + area.getPreferredSize().height
              + " high and has "
              + area.getHeight()
              + " in "
              + Layout.named(area));
    }
  }

  private static void check(JTable table, List<String> faults) {
    for (int column = 0; column < table.getColumnCount(); column++) {
      int room = table.getColumnModel().getColumn(column).getWidth();
      if (room == 0) {
        continue;
      }
      Component head =
          table
              .getTableHeader()
              .getDefaultRenderer()
              .getTableCellRendererComponent(
                  table, table.getColumnName(column), false, false, -1, column);
      note(
          table,
          table.getColumnName(column),
          new int[] {head.getPreferredSize().width, room},
          faults);
      for (int row = 0; row < table.getRowCount(); row++) {
        Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
        String words = String.valueOf(table.getValueAt(row, column));
        if (!isTold(((JComponent) cell).getToolTipText(), words)) {
          note(table, words, new int[] {cell.getPreferredSize().width, room}, faults);
        }
      }
    }
  }

  private static <T> void check(JList<T> list, List<String> faults) {
    ListCellRenderer<? super T> renderer = list.getCellRenderer();
    for (int n = 0; n < list.getModel().getSize(); n++) {
      T value = list.getModel().getElementAt(n);
      Component cell = renderer.getListCellRendererComponent(list, value, n, false, false);
      String words = cell instanceof JLabel label ? label.getText() : String.valueOf(value);
      Rectangle box = list.getCellBounds(n, n);
      MouseEvent over =
          new MouseEvent(list, MouseEvent.MOUSE_MOVED, 0, 0, box.x + 2, box.y + 2, 0, false);
      if (!isTold(list.getToolTipText(over), words)) {
        note(list, words, new int[] {cell.getPreferredSize().width, box.width}, faults);
      }
    }
  }

  private static <T> void check(JComboBox<T> box, List<String> faults) {
    int n = box.getSelectedIndex();
    if (n < 0) {
      return;
    }
    Component cell =
        box.getRenderer()
            .getListCellRendererComponent(new JList<>(), box.getItemAt(n), n, false, false);
    String words = cell instanceof JLabel label ? label.getText() : "";
    if (!isTold(box.getToolTipText(), words)) {
      int room = box.getWidth() - arrow(box) - box.getInsets().left - box.getInsets().right;
      int wide = box.getFontMetrics(box.getFont()).stringWidth(words);
      note(box, words, new int[] {wide, room}, faults);
    }
  }

  private static int arrow(JComboBox<?> box) {
    return Arrays.stream(box.getComponents())
        .filter(AbstractButton.class::isInstance)
        .mapToInt(Component::getWidth)
        .max()
        .orElse(0);
  }
}
