// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.grow.Years;

/** Growing seasons as a person counts them. */
final class YearsText {
  private YearsText() {}

  /** Best guess and band: {@code 2.8 years (1.4 to 5.6)}. */
  static String of(Years years) {
    if (years.high() == 0) {
      return "no time";
    }
    if (Double.isInfinite(years.likely())) {
      return Double.isInfinite(years.low())
          ? "never, as the tree does not grow"
          : "never, or " + one(years.low()) + " years at best";
    }
    return one(years.likely())
        + " years ("
        + one(years.low())
        + " to "
        + (Double.isInfinite(years.high()) ? "never" : one(years.high()))
        + ")";
  }

  /** The same for a column: {@code 2.8 (1.4-5.6)}. */
  static String brief(Years years) {
    if (years.high() == 0) {
      return "-";
    }
    return brief(years.likely()) + " (" + brief(years.low()) + "-" + brief(years.high()) + ")";
  }

  private static String brief(double years) {
    return Double.isInfinite(years) ? "never" : one(years);
  }

  private static String one(double years) {
    return Shown.fixed(years, years < 10 ? 1 : 0);
  }
}
