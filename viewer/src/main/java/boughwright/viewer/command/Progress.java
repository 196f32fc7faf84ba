// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.VisibleText;
import boughwright.physics.stage.Trying;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Says on stderr what is going on, once it takes longer than a second. */
final class Progress implements Trying.Watch, AutoCloseable {
  private static final long FIRST_SECONDS = 1;
  private static final int WIDTH = TextPage.WIDTH - 1;

  private final Console console;
  private final ScheduledExecutorService clock;
  private final long started = System.nanoTime();
  private volatile String doing = "Working";
  private volatile double part;
  private boolean shown;

  private Progress(Console console, ScheduledExecutorService clock) {
    this.console = console;
    this.clock = clock;
  }

  /**
   * Progress for a person who watches; silent for nobody, and for programs.
   *
   * @param json whether the answer is for a program
   */
  static Progress of(Console console, boolean json) {
    if (json || !console.watched()) {
      return new Progress(console, null);
    }
    ScheduledExecutorService clock =
        Executors.newSingleThreadScheduledExecutor(
            task -> {
              Thread thread = new Thread(task, "progress");
              thread.setDaemon(true);
              return thread;
            });
    Progress progress = new Progress(console, clock);
    clock.scheduleAtFixedRate(progress::show, FIRST_SECONDS, 1, TimeUnit.SECONDS);
    return progress;
  }

  @Override
  public void now(String what) {
    doing = VisibleText.of(what);
    part = 0;
  }

  @Override
  public void part(double done) {
    part = done;
  }

  private synchronized void show() {
    long seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - started);
    long percent = (long) Math.floor(100 * part);
    String line = doing + (percent > 0 ? ", " + percent + " %" : "") + ", " + seconds + " s";
    String cut = line.length() > WIDTH ? "..." + line.substring(line.length() - WIDTH + 3) : line;
    console.err().print("\r" + cut + " ".repeat(WIDTH - cut.length()));
    console.err().flush();
    shown = true;
  }

  /** Takes the line away. */
  @Override
  public void close() {
    if (clock == null) {
      return;
    }
    clock.shutdownNow();
    synchronized (this) {
      if (shown) {
        console.err().print("\r" + " ".repeat(WIDTH) + "\r");
        console.err().flush();
      }
    }
  }
}
