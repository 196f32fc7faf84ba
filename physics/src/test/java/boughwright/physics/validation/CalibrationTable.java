// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import java.util.Locale;

/** Stated probabilities of cracking in ten bins, against how often branches cracked. */
final class CalibrationTable {
  static final int BINS = 10;

  private final int[] cases = new int[BINS];
  private final int[] draws = new int[BINS];
  private final int[] cracked = new int[BINS];
  private final double[] stated = new double[BINS];
  private final double[] variance = new double[BINS];

  /** One branch and what became of those drawn for it. */
  void note(double p, int drawn, int cracks) {
    int bin = Math.min(BINS - 1, (int) (BINS * p));
    cases[bin]++;
    draws[bin] += drawn;
    cracked[bin] += cracks;
    stated[bin] += p * drawn;
    variance[bin] += p * (1 - p) * drawn;
  }

  int cases(int bin) {
    return cases[bin];
  }

  /** Mean of the stated probabilities of a bin [1]. */
  double stated(int bin) {
    return stated[bin] / draws[bin];
  }

  /** How often branches of a bin cracked [1]. */
  double frequency(int bin) {
    return (double) cracked[bin] / draws[bin];
  }

  /** Standard deviation of the frequency if what is stated is so [1]. */
  double chance(int bin) {
    return Math.sqrt(variance[bin]) / draws[bin];
  }

  /** Rows of a table for the docs. */
  String rows() {
    StringBuilder rows = new StringBuilder();
    for (int bin = 0; bin < BINS; bin++) {
      if (cases[bin] > 0) {
        rows.append(
            String.format(
                Locale.ROOT,
                "| %.1f to %.1f | %d | %.3f | %.3f |%n",
                bin / (double) BINS,
                (bin + 1) / (double) BINS,
                cases[bin],
                stated(bin),
                frequency(bin)));
      }
    }
    return rows.toString();
  }
}
