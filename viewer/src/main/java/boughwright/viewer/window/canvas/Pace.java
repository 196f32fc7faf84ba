// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

/**
 * How finely pictures are drawn while the tree moves, so that it follows the hand: never finer than
 * user pixels, coarser where this machine is slow.
 */
final class Pace {
  /** A picture that takes longer makes the next ones coarser [ns]. */
  private static final long SLOW = 45_000_000;

  /** A picture that is ready sooner makes the next ones finer [ns]. */
  private static final long QUICK = 15_000_000;

  private static final double[] STEPS = {1, 0.75};

  /** So many quick or slow pictures in a row change it: one says little. */
  private static final int IN_A_ROW = 3;

  private int step;
  private int row;

  /** Pixels drawn for each user pixel. */
  double scale(double device) {
    return Math.min(device, 1) * STEPS[step];
  }

  /** Takes how long a picture of something that moves took [ns]. */
  void took(long nanoseconds) {
    int wish = nanoseconds > SLOW ? 1 : nanoseconds < QUICK ? -1 : 0;
    row = wish == 0 || Integer.signum(row) == -wish ? wish : row + wish;
    if (Math.abs(row) >= IN_A_ROW) {
      step = Math.min(STEPS.length - 1, Math.max(0, step + wish));
      row = 0;
    }
  }
}
