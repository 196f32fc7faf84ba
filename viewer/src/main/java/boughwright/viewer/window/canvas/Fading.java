// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import java.util.Optional;
import javax.swing.Timer;

/** One picture of a tree going over into that of another. Belongs to the event thread. */
final class Fading {
  private static final int FADE_MS = 220;
  private static final int STEP_MS = 15;

  private final Runnable changed;
  private final Timer timer = new Timer(STEP_MS, event -> step());
  private Optional<LivePicture> leaving = Optional.empty();
  private boolean prepared;
  private long began;

  /**
   * @param changed told at every step
   */
  Fading(Runnable changed) {
    this.changed = changed;
  }

  /** Keeps the picture that goes; it stays alone until the next one comes. */
  void prepare(Optional<LivePicture> going) {
    leaving = going;
    prepared = going.isPresent();
  }

  /** The next picture is there. */
  void begin() {
    if (prepared) {
      prepared = false;
      began = System.nanoTime();
      timer.start();
    }
  }

  boolean isRunning() {
    return prepared || timer.isRunning();
  }

  private double part() {
    return Math.min(1, (System.nanoTime() - began) / 1e6 / FADE_MS);
  }

  private void step() {
    if (part() >= 1) {
      timer.stop();
      leaving = Optional.empty();
    }
    changed.run();
  }

  /** The picture that goes; empty most of the time. */
  Optional<LivePicture> leaving() {
    return leaving.filter(picture -> timer.isRunning());
  }

  /** How much of the picture that goes is still seen; what both show stays covered throughout. */
  float leavingShare() {
    return (float) Math.min(1, 2 - 2 * part());
  }

  /** How much of the picture that comes is seen. */
  float comingShare() {
    return timer.isRunning() ? (float) Math.min(1, 2 * part()) : 1;
  }
}
