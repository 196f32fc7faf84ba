// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * Colours for scores: pale where a score is low, dark blue where it is high.
 *
 * <p>Our own ramp, straight in CIE L*a*b* between its stops; its lightness falls evenly from end to
 * end, so that it reads in grey and with any colour vision.
 *
 * @param low score at the pale end [1]
 * @param high score at the dark end, more than at the other [1]
 */
public record ScoreScale(double low, double high) {
  private static final Lab[] STOPS = {
    new Lab(96, -2, 14), new Lab(72, -16, 26), new Lab(48, -18, -8), new Lab(24, 14, -40)
  };

  /** Scores nearer to each other than this are told by one colour [1]. */
  private static final double LEAST = 0.02;

  /** Ticks are so far apart [1]. */
  private static final double[] STEPS = {0.01, 0.02, 0.05, 0.1, 0.2};

  private static final int MOST_TICKS = 6;

  public ScoreScale {
    if (!(high > low)) {
      throw new IllegalArgumentException("a scale from " + low + " to " + high);
    }
  }

  /** The scale on which the lowest and the highest of some scores are the ends. */
  public static ScoreScale around(double lowest, double highest) {
    double spare = Math.max(0, LEAST - (highest - lowest)) / 2;
    return new ScoreScale(lowest - spare, highest + spare);
  }

  /** The colour of a score; beyond an end it stays that of the end. */
  public Colour colour(double score) {
    double place = (STOPS.length - 1) * Math.min(1, Math.max(0, (score - low) / (high - low)));
    int n = Math.min(STOPS.length - 2, (int) place);
    return Colour.of(STOPS[n].toward(STOPS[n + 1], place - n));
  }

  /** Round scores on the scale, from low to high [1]. */
  public List<Double> ticks() {
    for (double step : STEPS) {
      List<Double> ticks = new ArrayList<>();
      for (long n = (long) Math.ceil(low / step - 1e-9); n * step <= high + 1e-9; n++) {
        ticks.add(n * step);
      }
      if (ticks.size() <= MOST_TICKS) {
        return ticks;
      }
    }
    return List.of(low, high);
  }
}
