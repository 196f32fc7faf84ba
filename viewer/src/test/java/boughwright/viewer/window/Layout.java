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
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JScrollBar;
import javax.swing.JViewport;
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
      faults.addAll(Clipped.words(child));
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
    boolean wide = box.x < left - ROUNDING || box.x + box.width > parent.getWidth() + ROUNDING;
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

  private static String words(Rectangle box) {
    return box.x + "," + box.y + " " + box.width + " x " + box.height;
  }

  static String named(Component part) {
    return part.getName() != null
        ? part.getName()
        : part.getClass().getSimpleName()
            + (part instanceof JLabel label ? " \"" + label.getText() + "\"" : "")
            + (part.getParent() == null ? "" : " in " + named(part.getParent()));
  }
}
