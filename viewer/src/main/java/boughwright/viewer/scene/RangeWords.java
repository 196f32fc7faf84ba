// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.trial.Range;
import java.util.Locale;

/** Ranges as a person reads them: "80 to 190 N, most likely 125 N". */
public final class RangeWords {
  /** Ends are rounded to about this part of the width: finer would pretend to know more [1]. */
  private static final double STEPS = 25;

  /** A range narrower than this part of its middle is one number [1]. */
  private static final double NARROW = 2e-3;

  private RangeWords() {}

  /** A force [N]. */
  public static String newtons(Range force) {
    return of(force, 1, " N", "");
  }

  /** A strain [1], in per cent. */
  public static String percent(Range strain) {
    return percent(strain, "");
  }

  /** A part of something [1], in per cent; of what stands after the ends. */
  public static String percent(Range part, String of) {
    return of(part, 100, " %", of);
  }

  /** Whether the ends lie so near each other that only one number is said. */
  public static boolean isOneNumber(Range range) {
    return range.high() - range.low() <= NARROW * Math.abs(range.middle());
  }

  private static String of(Range range, double factor, String unit, String after) {
    double middle = factor * range.middle();
    if (isOneNumber(range)) {
      return number(middle, stepOf(Math.abs(middle) / STEPS)) + unit + after;
    }
    double step = stepOf(factor * (range.high() - range.low()) / STEPS);
    return number(factor * range.low(), step)
        + " to "
        + number(factor * range.high(), step)
        + unit
        + after
        + ", most likely "
        + number(middle, step)
        + unit;
  }

  /** 1, 2 or 5 times a power of ten, at most a given size; a thousandth for nothing at all. */
  private static double stepOf(double most) {
    if (!(most > 1e-3)) {
      return 1e-3;
    }
    double power = Math.pow(10, Math.floor(Math.log10(most)));
    double of = most / power;
    return power * (of >= 5 ? 5 : of >= 2 ? 2 : 1);
  }

  private static String number(double value, double step) {
    int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    double rounded = step * Math.rint(value / step);
    return String.format(Locale.ROOT, "%." + decimals + "f", rounded == 0 ? 0.0 : rounded);
  }
}
