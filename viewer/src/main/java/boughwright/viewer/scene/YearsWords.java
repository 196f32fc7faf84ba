// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.grow.WoundClosure;
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

  /** When it is so: {@code in 2.8 years (1.4 to 5.6)}. */
  public static String when(Years years) {
    return years.high() == 0
        ? "at once"
        : Double.isInfinite(years.likely()) ? of(years) : "in " + of(years);
  }

  /** When a wound closes, and whether in time: {@code closes in 2.8 years (1.4 to 5.6)}. */
  public static String closes(WoundClosure wound) {
    String late = ", too late to keep decay out";
    return "closes "
        + when(wound.years())
        + (wound.isLate() ? late : wound.mayBeLate() ? late.replace(", ", ", perhaps ") : "");
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
    return String.format(Locale.ROOT, years < 9.95 ? "%.1f" : "%.0f", years);
  }
}
