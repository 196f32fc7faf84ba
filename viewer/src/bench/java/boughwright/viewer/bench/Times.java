// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Median and quartiles of many runs. */
public final class Times {
  /** Runs of one row, and how long it may go on when they take long [ns]. */
  static final int FEWEST_RUNS = 7;

  static final long LONG_ENOUGH = 4_000_000_000L;

  private final List<Double> millis = new ArrayList<>();

  /** Takes how long a run took [ns]. */
  public void add(long nanoseconds) {
    millis.add(nanoseconds / 1e6);
  }

  boolean isEnough(long from) {
    return millis.size() >= FEWEST_RUNS && System.nanoTime() - from > LONG_ENOUGH;
  }

  @Override
  public String toString() {
    List<Double> sorted = millis.stream().sorted().toList();
    int count = sorted.size();
    double half = sorted.get(count / 2);
    return String.format(
        Locale.ROOT,
        half < 1 ? "%.3f ms (%.3f to %.3f)" : "%.1f ms (%.1f to %.1f)",
        half,
        sorted.get(count / 4),
        sorted.get(3 * count / 4));
  }
}
