// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.exception.MathIllegalStateException;

/** Finds the part of a bend that risks just what is allowed. */
final class Easing {
  /** How closely, as a part of the bend [1]. */
  private static final double EASED = 2e-3;

  private static final int MOST_EASINGS = 25;

  /** Standard deviations from failing beyond which risks count alike [1]. */
  static final double FAR = 6;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private Easing() {}

  /**
   * The part that risks what is allowed, not more.
   *
   * @param breaking odds of breaking by the part of the bend; empty where no pose holds
   * @param least the least part that is looked at
   * @param mostRisk the most that any breaking may risk, between 0 and 1 [1]
   * @return empty where even the least part risks more, or all of it risks less
   */
  static OptionalDouble part(
      DoubleFunction<OptionalDouble> breaking, double least, double mostRisk) {
    double allowed = deviations(mostRisk);
    UnivariateFunction over =
        part -> {
          OptionalDouble odds = breaking.apply(part);
          return odds.isPresent() ? deviations(odds.getAsDouble()) - allowed : FAR;
        };
    if (!(least < 1) || over.value(least) > 0 || over.value(1) <= 0) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(
          new BracketingNthOrderBrentSolver(EASED, EASED, 3)
              .solve(MOST_EASINGS, over, least, 1, AllowedSolution.BELOW_SIDE));
    } catch (MathIllegalStateException e) {
      return OptionalDouble.empty();
    }
  }

  /** Standard deviations from an even chance, no further than {@link #FAR} [1]. */
  static double deviations(double p) {
    double least = NORMAL.cumulativeProbability(-FAR);
    return NORMAL.inverseCumulativeProbability(Math.min(1 - least, Math.max(least, p)));
  }
}
