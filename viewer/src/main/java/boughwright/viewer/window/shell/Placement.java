// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.shell.kept.Settings;
import java.awt.Dimension;
import java.awt.Frame;
import java.awt.GraphicsConfiguration;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.util.Optional;
import javax.swing.JFrame;

/** Where a window stands on its screen: always whole on it [user pixels]. */
final class Placement {
  /** The part of a screen that a first window takes [%]. */
  private static final int PART = 85;

  private static final int HUNDRED = 100;
  private static final Dimension MOST = new Dimension(1600, 1000);

  private Placement() {}

  /** A window that stood nowhere yet: a good part of the screen, in its middle. */
  static Rectangle first(Rectangle room, Dimension least) {
    int width = Math.max(least.width, Math.min(MOST.width, room.width * PART / HUNDRED));
    int height = Math.max(least.height, Math.min(MOST.height, room.height * PART / HUNDRED));
    return fitted(
        new Rectangle(
            room.x + (room.width - width) / 2, room.y + (room.height - height) / 2, width, height),
        room);
  }

  /** The same place where it fits, else the nearest that does, no larger than the room. */
  static Rectangle fitted(Rectangle wished, Rectangle room) {
    int width = Math.min(wished.width, room.width);
    int height = Math.min(wished.height, room.height);
    int x = Math.max(room.x, Math.min(wished.x, room.x + room.width - width));
    int y = Math.max(room.y, Math.min(wished.y, room.y + room.height - height));
    return new Rectangle(x, y, width, height);
  }

  /** The part of a screen that the system leaves to windows. */
  static Rectangle room(GraphicsConfiguration screen) {
    Rectangle bounds = screen.getBounds();
    Insets edge = Toolkit.getDefaultToolkit().getScreenInsets(screen);
    return new Rectangle(
        bounds.x + edge.left,
        bounds.y + edge.top,
        bounds.width - edge.left - edge.right,
        bounds.height - edge.top - edge.bottom);
  }

  /** What a screen is known by: itself and its size. */
  static String screen(GraphicsConfiguration screen) {
    Rectangle bounds = screen.getBounds();
    return screen.getDevice().getIDstring() + " " + bounds.width + "x" + bounds.height;
  }

  /** Places a window that is not shown yet, as the last one on its screen stood. */
  static void place(JFrame window, Optional<Settings.Place> before) {
    Rectangle room = room(window.getGraphicsConfiguration());
    Dimension least = window.getMinimumSize();
    window.setMinimumSize(
        new Dimension(Math.min(least.width, room.width), Math.min(least.height, room.height)));
    Rectangle wished =
        before
            .map(
                at ->
                    new Rectangle(
                        at.x(),
                        at.y(),
                        Math.max(least.width, at.width()),
                        Math.max(least.height, at.height())))
            .orElseGet(() -> first(room, least));
    window.setBounds(fitted(wished, room));
    if (before.filter(Settings.Place::whole).isPresent()) {
      window.setExtendedState(Frame.MAXIMIZED_BOTH);
    }
  }

  /** Places a window a little off another. */
  static void placeBeside(JFrame window, JFrame other) {
    int off = 32;
    Rectangle wished = new Rectangle(other.getBounds());
    wished.translate(off, off);
    window.setBounds(fitted(wished, room(other.getGraphicsConfiguration())));
  }

  /** Where a window stands now; while it fills the screen, where it stood before. */
  static Settings.Place of(JFrame window, Rectangle usual) {
    boolean whole = (window.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
    Rectangle at = whole ? usual : window.getBounds();
    return new Settings.Place(at.x, at.y, at.width, at.height, whole);
  }
}
