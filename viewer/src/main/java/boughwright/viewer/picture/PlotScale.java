// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A straight scale of a plot, from values to pixels.
 *
 * @param low value at the low end
 * @param high value at the high end
 * @param from where the low end is on the page [pixels]
 * @param to where the high end is [pixels]
 */
record PlotScale(double low, double high, double from, double to) {
  private static final double[] STEPS = {1, 2, 5, 10};

  PlotScale {
    if (!(high > low)) {
      throw new IllegalArgumentException("a scale from " + low + " to " + high);
    }
  }

  double at(double value) {
    return from + (value - low) / (high - low) * (to - from);
  }

  /** The round step that gives at most so many ticks. */
  double step(int most) {
    double least = (high - low) / most;
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double step : STEPS) {
      if (step * power >= least * (1 - 1e-9)) {
        return step * power;
      }
    }
    throw new IllegalStateException("no step for " + low + " to " + high);
  }

  /** Round values on the scale, at most about so many. */
  List<Double> ticks(int most) {
    double step = step(most);
    List<Double> ticks = new ArrayList<>();
    for (long n = (long) Math.ceil(low / step - 1e-9); n * step <= high + 1e-9 * step; n++) {
      ticks.add(n * step);
    }
    return ticks;
  }

  /** A tick's value without its sign, with the decimals that its step needs. */
  static String words(double value, double step) {
    int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    return String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
  }
}
