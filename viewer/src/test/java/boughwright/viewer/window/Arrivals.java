// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;

/**
 * Keeps count of what mouse and keyboard did to this process. The toolkit's own waiting wants a
 * queue that is empty, and a window that works something out in the background never has one.
 */
final class Arrivals extends EventQueue {
  private static final Arrivals INSTANCE = new Arrivals();

  private volatile Tally tally = new Tally(0, 0, 0, new Point(-1, -1));

  /**
   * What has come so far; what came is worked off once the event thread answers.
   *
   * @param all events of mouse and keys
   * @param sure of them keys down, buttons down and up, which never fail to come
   * @param keysUp of them keys up, which nobody hears where the window has just closed
   * @param pointer where the mouse was last [user pixels of the screen]
   */
  record Tally(long all, long sure, long keysUp, Point pointer) {
    private Tally with(InputEvent event) {
      int id = event.getID();
      boolean pressed =
          id == KeyEvent.KEY_PRESSED
              || id == MouseEvent.MOUSE_PRESSED
              || id == MouseEvent.MOUSE_RELEASED;
      return new Tally(
          all + 1,
          sure + (pressed ? 1 : 0),
          keysUp + (id == KeyEvent.KEY_RELEASED ? 1 : 0),
          event instanceof MouseEvent mouse ? mouse.getLocationOnScreen() : pointer);
    }
  }

  private Arrivals() {}

  /** The one of this process, in the way of its events from now on. */
  static synchronized Arrivals ofProcess() {
    EventQueue now = Toolkit.getDefaultToolkit().getSystemEventQueue();
    if (now != INSTANCE) {
      now.push(INSTANCE);
    }
    return INSTANCE;
  }

  Tally tally() {
    return tally;
  }

  @Override
  protected void dispatchEvent(AWTEvent event) {
    // before it is worked off: what opens a dialog is worked off only when that is closed
    if (event instanceof InputEvent input) {
      tally = tally.with(input);
    }
    super.dispatchEvent(event);
  }
}
