// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Counts what mouse and keyboard did to this process. The toolkit's own waiting wants a queue that
 * is empty, and a window that works something out in the background never has one.
 */
final class Arrivals extends EventQueue {
  private static final Arrivals INSTANCE = new Arrivals();

  private final AtomicLong count = new AtomicLong();

  private Arrivals() {}

  /** The one of this process, in the way of its events from now on. */
  static synchronized Arrivals ofProcess() {
    EventQueue now = Toolkit.getDefaultToolkit().getSystemEventQueue();
    if (now != INSTANCE) {
      now.push(INSTANCE);
    }
    return INSTANCE;
  }

  /** How many have been worked off. */
  long count() {
    return count.get();
  }

  @Override
  protected void dispatchEvent(AWTEvent event) {
    super.dispatchEvent(event);
    if (event instanceof InputEvent) {
      count.incrementAndGet();
    }
  }
}
