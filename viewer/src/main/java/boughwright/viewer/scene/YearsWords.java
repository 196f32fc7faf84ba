// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.grow.Years;
import java.util.Locale;

/** Growing seasons as a person counts them. */
public final class YearsWords {
  private YearsWords() {}

  /** Best guess and band: {@code 2.8 years (1.4 to 5.6)}. */
  public static String of(Years years) {
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
  public static String brief(Years years) {
    if (years.high() == 0) {
      return "-";
    }
    return brief(years.likely()) + " (" + brief(years.low()) + "-" + brief(years.high()) + ")";
  }

  private static String brief(double years) {
    return Double.isInfinite(years) ? "never" : one(years);
  }

  private static String one(double years) {
    return String.format(Locale.ROOT, years < 10 ? "%.1f" : "%.0f", years);
  }
}
