// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Insets;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Finds what is laid out badly: cut off, one over the other, words wider than their box. */
public final class Layout {
  /** Rounding of scaled sizes [user pixels]. */
  private static final int ROUNDING = 1;

  private Layout() {}

  /** Everything that is wrong in what shows, in words; empty if all is well. */
  public static List<String> faults(Container root) {
    List<String> faults = new ArrayList<>();
    look(root, faults);
    return faults;
  }

  private static void look(Container parent, List<String> faults) {
    List<Component> shown = new ArrayList<>();
    for (Component child : parent.getComponents()) {
      if (child.isShowing() && !(child instanceof CellRendererPane)) {
        shown.add(child);
      }
    }
    for (Component child : shown) {
      checkInside(parent, child, faults);
      checkWords(child, faults);
      if (child instanceof Container inner) {
        look(inner, faults);
      }
    }
    if (!(parent instanceof JLayeredPane) && !paintsOver(parent)) {
      checkApart(shown, faults);
    }
  }

  /** Fields keep what trails in them over their own text on purpose. */
  private static boolean paintsOver(Container parent) {
    return parent instanceof JTextComponent;
  }

  private static void checkInside(Container parent, Component child, List<String> faults) {
    Rectangle box = child.getBounds();
    Insets insets = parent.getInsets();
    int left = parent instanceof JViewport ? 0 : Math.min(insets.left, 0);
    boolean ownBar = parent instanceof JViewport && hasBarBelow(parent);
    boolean wide =
        !ownBar && (box.x < left - ROUNDING || box.x + box.width > parent.getWidth() + ROUNDING);
    boolean high = box.y < -ROUNDING || box.y + box.height > parent.getHeight() + ROUNDING;
    if (wide || high && !(parent instanceof JViewport)) {
      faults.add(
          named(child)
              + " at "
              + words(box)
              + " is cut off by "
              + named(parent)
              + " of "
              + parent.getWidth()
              + " x "
              + parent.getHeight());
    }
    boolean seen =
        !(parent instanceof JScrollBar)
            && (child instanceof AbstractButton || child instanceof JTextComponent);
    if (seen && (box.width < 1 || box.height < 1)) {
      faults.add(named(child) + " has no size");
    }
  }

  /** A table may be wider than its place where a bar leads to the rest. */
  private static boolean hasBarBelow(Container viewport) {
    return viewport.getParent() instanceof JScrollPane pane
        && pane.getHorizontalScrollBarPolicy() != ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER;
  }

  private static void checkApart(List<Component> siblings, List<String> faults) {
    for (int i = 0; i < siblings.size(); i++) {
      for (int j = i + 1; j < siblings.size(); j++) {
        Rectangle both = siblings.get(i).getBounds().intersection(siblings.get(j).getBounds());
        if (both.width > ROUNDING && both.height > ROUNDING) {
          faults.add(named(siblings.get(i)) + " lies over " + named(siblings.get(j)));
        }
      }
    }
  }

  private static void checkWords(Component part, List<String> faults) {
    if (part instanceof JLabel label) {
      check(label, label.getText(), label.getInsets(), faults);
    } else if (part instanceof AbstractButton button) {
      check(button, button.getText(), button.getInsets(), faults);
    }
  }

  private static void check(JComponent part, String words, Insets insets, List<String> faults) {
    if (words == null || words.isBlank() || words.startsWith("<html>") || mayBeCut(part)) {
      return;
    }
    int room = part.getWidth() - insets.left - insets.right;
    int wide = SwingUtilities.computeStringWidth(part.getFontMetrics(part.getFont()), words);
    if (wide > room + ROUNDING) {
      faults.add("\"" + words + "\" needs " + wide + " of " + room + " in " + named(part));
    }
  }

  /**
   * What is said at the foot of the window can be longer than any line; its whole is one key away.
   */
  private static boolean mayBeCut(JComponent part) {
    return "status.notice".equals(part.getName()) || "status.work".equals(part.getName());
  }

  private static String words(Rectangle box) {
    return box.x + "," + box.y + " " + box.width + " x " + box.height;
  }

  private static String named(Component part) {
    return part.getName() != null
        ? part.getName()
        : part.getClass().getSimpleName()
            + (part instanceof JLabel label ? " \"" + label.getText() + "\"" : "")
            + (part.getParent() == null ? "" : " in " + named(part.getParent()));
  }
}
