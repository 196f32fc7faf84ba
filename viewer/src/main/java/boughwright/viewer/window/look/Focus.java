// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Window;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;

/** Where the keyboard is, made visible. */
public final class Focus {
  private static final int LINE = 2;

  private Focus() {}

  /** Paints the ring of what has the focus, just inside its bounds. */
  public static void ring(Graphics2D pen, JComponent on) {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.setColor(Theme.colour(Shade.ACCENT));
    pen.setStroke(new BasicStroke(LINE));
    double inset = LINE / 2.0;
    pen.draw(
        new RoundRectangle2D.Double(
            inset, inset, on.getWidth() - LINE, on.getHeight() - LINE, 10, 10));
    pen.dispose();
  }

  /** Scrolls what has the focus into view. */
  static void reveal(JComponent on) {
    on.scrollRectToVisible(new Rectangle(0, 0, on.getWidth(), on.getHeight()));
  }

  /**
   * Shows a dialog that waits, and brings the keyboard back to where it was, also where nobody else
   * sees to that.
   *
   * @param over a part of the window that the dialog stands over
   * @param dialog returns when the dialog is closed
   */
  public static void lend(Component over, Runnable dialog) {
    Component before = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    dialog.run();
    Window window = over instanceof Window whole ? whole : SwingUtilities.getWindowAncestor(over);
    if (window == null || !window.isShowing()) {
      return;
    }
    // A menu that was open had the keyboard only for itself, and has handed it back since.
    Component target = before instanceof JRootPane ? window.getMostRecentFocusOwner() : before;
    window.requestFocus();
    if (target != null && target.isShowing()) {
      target.requestFocusInWindow();
    }
  }
}
