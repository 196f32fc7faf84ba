// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How many decimals a number is shown with, by its size. Two values that round to the same number
 * look the same, on both sides of a step too.
 *
 * @param small decimals of numbers below 0.1
 * @param below1 from there to 1
 * @param below10 from there to 10
 * @param below100 from there to 100
 * @param above beyond
 */
record Rounding(int small, int below1, int below10, int below100, int above) {
  String of(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal shown = rounded(exact, decimals(exact));
    shown = rounded(exact, decimals(shown));
    return shown.signum() == 0 ? "0" : shown.toPlainString();
  }

  private int decimals(BigDecimal value) {
    double size = value.abs().doubleValue();
    if (size < 0.1) {
      return small;
    }
    if (size < 1) {
      return below1;
    }
    if (size < 10) {
      return below10;
    }
    return size < 100 ? below100 : above;
  }

  private static BigDecimal rounded(BigDecimal value, int decimals) {
    return value.setScale(decimals, RoundingMode.HALF_UP);
  }

  /** At most so many decimals, without needless zeros. */
  static String plain(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal shown = rounded(BigDecimal.valueOf(value), decimals).stripTrailingZeros();
    return shown.signum() == 0 ? "0" : shown.toPlainString();
  }
}
