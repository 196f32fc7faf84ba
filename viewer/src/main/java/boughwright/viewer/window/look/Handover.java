// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.beans.PropertyChangeListener;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.swing.JComponent;

/**
 * Hands the keyboard on from one field to the next, and keeps for the next what is typed meanwhile.
 * The toolkit does so too, but by the clock: where anything else happened between two keys, the
 * second still goes to the field before, and a caliper of 30 mm becomes one of 3.
 */
public final class Handover {
  /** After so long the field will not get the keyboard any more [ns]. */
  private static final long GIVEN_UP = 3_000_000_000L;

  private static final KeyboardFocusManager KEYBOARD =
      KeyboardFocusManager.getCurrentKeyboardFocusManager();

  private static Handover pending;

  private final JComponent next;
  private final Deque<KeyEvent> held = new ArrayDeque<>();
  private final long begun = System.nanoTime();
  private final KeyEventDispatcher keeper = this::keep;
  private final FocusAdapter arrival =
      new FocusAdapter() {
        @Override
        public void focusGained(FocusEvent event) {
          release(next);
        }
      };
  private final PropertyChangeListener elsewhere =
      change -> {
        if (change.getNewValue() instanceof Component other && other != next()) {
          release(other);
        }
      };

  private Handover(JComponent next) {
    this.next = next;
  }

  /** Gives the keyboard to a field of the same window; to be asked on the event thread. */
  public static void to(JComponent next) {
    if (next.isFocusOwner() || !next.requestFocusInWindow()) {
      return;
    }
    Handover handover = new Handover(next);
    if (pending != null) {
      pending.end();
      handover.held.addAll(pending.held);
    }
    pending = handover;
    KEYBOARD.addKeyEventDispatcher(handover.keeper);
    KEYBOARD.addPropertyChangeListener("focusOwner", handover.elsewhere);
    next.addFocusListener(handover.arrival);
  }

  private JComponent next() {
    return next;
  }

  private boolean keep(KeyEvent event) {
    if (System.nanoTime() - begun > GIVEN_UP) {
      release(event.getComponent());
      return false;
    }
    return held.add(event);
  }

  private void end() {
    KEYBOARD.removeKeyEventDispatcher(keeper);
    KEYBOARD.removePropertyChangeListener("focusOwner", elsewhere);
    next.removeFocusListener(arrival);
    pending = null;
  }

  /** Gives what was typed to who has the keyboard now, up to the key that hands it on again. */
  private void release(Component owner) {
    end();
    while (!held.isEmpty() && pending == null) {
      KeyEvent event = held.poll();
      event.setSource(owner);
      KEYBOARD.dispatchKeyEvent(event);
    }
    if (pending != null) {
      pending.held.addAll(held);
    }
  }
}
