// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.trial.Probability;

/** Probabilities as a grower says them: "about 1 in 30, could be 1 in 14". */
public final class ChanceWords {
  /** Below this no number is said [1]. */
  public static final double LEAST = 1e-3;

  /** Above this no number is said [1]. */
  public static final double MOST = 0.9;

  /** From this on it is said in tenths, for "1 in 3" and "1 in 2" lie too far apart [1]. */
  private static final double TENTHS_FROM = 0.3;

  /**
   * Draws in which something never happened leave a probability of 3 / draws possible: the 95 %
   * bound of the rule of three (Hanley and Lippman-Hand 1983, JAMA 249:1743, from memory).
   */
  private static final double RULE_OF_THREE = 3;

  private ChanceWords() {}

  /**
   * The best probability, and the high end of its range where that reads differently.
   *
   * @param samples draws the probability comes from, which bound the smallest that can be told
   */
  public static String of(Probability probability, int samples) {
    String best = about(probability.p(), samples);
    String high = bare(probability.high(), samples);
    return best.endsWith(high) || probability.high() <= probability.p()
        ? best
        : best + ", could be " + high;
  }

  /** One probability with "about" before it where it is a number. */
  public static String about(double p, int samples) {
    String words = bare(p, samples);
    return Character.isDigit(words.charAt(0)) ? "about " + words : words;
  }

  private static String bare(double p, int samples) {
    double least = Math.max(LEAST, RULE_OF_THREE / samples);
    if (p < least) {
      return "less than 1 in " + (long) Math.floor(1 / least + 1e-9);
    }
    if (p > MOST) {
      return "more than 9 in 10";
    }
    if (p >= TENTHS_FROM) {
      long tenths = Math.round(10 * p);
      return tenths == 5 ? "1 in 2" : tenths + " in 10";
    }
    return "1 in " + rounded(1 / p);
  }

  private static long rounded(double n) {
    double step = n < 20 ? 1 : n < 100 ? 5 : n < 200 ? 10 : 50;
    return Math.round(step * Math.rint(n / step));
  }
}
