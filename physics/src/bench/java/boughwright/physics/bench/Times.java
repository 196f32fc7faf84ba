// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.bench;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;

/**
 * Measured times.
 *
 * @param median the middle one [us]
 * @param low the one a tenth of them are below [us]
 * @param high the one a tenth of them are above [us]
 */
record Times(double median, double low, double high) {
  static Times of(double... times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    int tenth = sorted.length / 10;
    return new Times(
        sorted[sorted.length / 2], sorted[tenth], sorted[sorted.length - 1 - tenth]);
  }

  /** The iterations of all forks of a benchmark. */
  static Times of(RunResult result) {
    Collection<BenchmarkResult> forks = result.getBenchmarkResults();
    return of(
        forks.stream()
            .flatMap(fork -> fork.getIterationResults().stream())
            .map(IterationResult::getPrimaryResult)
            .mapToDouble(primary -> primary.getScore())
            .toArray());
  }

  /** Median and spread, in milliseconds from a thousand microseconds on. */
  String text() {
    boolean milli = median >= 1000;
    double unit = milli ? 1000 : 1;
    return String.format(
        Locale.ROOT,
        "%s %s (%s–%s)",
        digits(median / unit),
        milli ? "ms" : "µs",
        digits(low / unit),
        digits(high / unit));
  }

  private static String digits(double value) {
    return String.format(Locale.ROOT, value < 10 ? "%.2f" : value < 100 ? "%.1f" : "%.0f", value);
  }
}
