// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * Probabilities in the words a person bets with: {@code about 1 in 30, could be 1 in 14}.
 *
 * <p>A probability is rounded to the nearest of a few plain odds, by the ratio of the odds for to
 * the odds against, so that 1 in 30 and 29 in 30 are rounded alike.
 */
public final class Odds {
  /** Fewer than this part is never told apart: a sampler of some thousand draws cannot [1]. */
  public static final double LEAST = 1.0 / 1000;

  private static final int[][] PLAIN = {
    {1, 1000}, {1, 500}, {1, 300}, {1, 200}, {1, 150}, {1, 100}, {1, 80}, {1, 60}, {1, 50}, {1, 40},
    {1, 35}, {1, 30}, {1, 25}, {1, 20}, {1, 18}, {1, 16}, {1, 14}, {1, 12}, {1, 11}, {1, 10},
    {1, 9}, {1, 8}, {1, 7}, {1, 6}, {1, 5}, {1, 4}, {1, 3}, {2, 5}, {1, 2}, {3, 5}, {2, 3}, {3, 4},
    {4, 5}, {5, 6}, {9, 10}, {19, 20}, {49, 50}, {99, 100}
  };

  private Odds() {}

  /**
   * One probability: {@code about 1 in 30}, {@code less than 1 in 1000}, {@code almost certain}.
   *
   * @param p from 0 to 1 [1]
   */
  public static String words(double p) {
    String bare = bare(p);
    return Character.isDigit(bare.charAt(0)) ? "about " + bare : bare;
  }

  /** The best probability, and the end it could reach where that reads differently. */
  public static String words(Probability probability) {
    double worst = Math.max(probability.p(), probability.high());
    String high = bare(worst);
    return high.equals(bare(probability.p()))
        ? words(probability.p())
        : words(probability.p()) + ", could be " + high;
  }

  private static String bare(double p) {
    if (!(p >= 0 && p <= 1)) {
      throw new IllegalArgumentException("a probability lies between 0 and 1, not " + p);
    }
    int[] most = PLAIN[PLAIN.length - 1];
    if (p < LEAST) {
      return "less than 1 in 1000";
    }
    if (p > (double) most[0] / most[1]) {
      return "almost certain";
    }
    int[] nearest = PLAIN[0];
    for (int[] odds : PLAIN) {
      if (distance(odds, p) < distance(nearest, p)) {
        nearest = odds;
      }
    }
    return nearest[0] + " in " + nearest[1];
  }

  private static double distance(int[] odds, double p) {
    return Math.abs(logit((double) odds[0] / odds[1]) - logit(p));
  }

  private static double logit(double p) {
    return Math.log(p / (1 - p));
  }
}
