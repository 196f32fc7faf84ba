// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import java.util.function.Consumer;

/** Runs long work off the event thread, with its progress shown and a way to stop it. */
public interface Background {

  /** Long work. */
  @FunctionalInterface
  interface Work<T> {
    /**
     * Does the work, on a thread of its own.
     *
     * @throws java.util.concurrent.CancellationException soon after it was stopped
     * @throws Exception whatever goes wrong; it is told in one line
     */
    T run(Progress progress) throws Exception;
  }

  /** What work tells of itself; any thread may call. */
  interface Progress {
    /** What is going on. */
    void now(String what);

    /**
     * The part that is done, 0 to 1 [1].
     *
     * @throws java.util.concurrent.CancellationException if the work was stopped
     */
    void part(double done);

    /** Whether the work was stopped; then it need not go on. */
    boolean isStopped();
  }

  /** Work that was started. */
  interface Job {
    /** Stops it; its result is never handed over. */
    void cancel();

    boolean isRunning();
  }

  /**
   * Starts work.
   *
   * @param name what it is, for the person, such as {@code Trying plan a}
   * @param work the work
   * @param done gets the result on the event thread, unless the work was stopped or failed
   */
  <T> Job start(String name, Work<T> work, Consumer<T> done);
}
