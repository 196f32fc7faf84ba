// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * All ways of breaking taken together.
 *
 * <p>The ways are combined as if each drew its own luck, 1 - (1 - p1)(1 - p2)...: weak wood is weak
 * in several ways at once, so this is never too low.
 *
 * @param breaking best probability of any crack, split, shear or tear [1]
 * @param breakingHigh its 95 % point [1]
 * @param kink best probability of a kink [1]
 */
record RiskSum(double breaking, double breakingHigh, double kink) {

  static RiskSum of(Risk risk) {
    return of(risk.failures(), failure -> failure.probability());
  }

  static RiskSum of(List<FailureRisk> failures, Function<FailureRisk, Probability> how) {
    double kink =
        failures.stream()
            .filter(failure -> failure.mode() == FailureMode.KINK)
            .mapToDouble(failure -> how.apply(failure).p())
            .max()
            .orElse(0);
    return new RiskSum(
        any(failures, failure -> how.apply(failure).p()),
        any(failures, failure -> how.apply(failure).high()),
        kink);
  }

  private static double any(List<FailureRisk> failures, ToDoubleFunction<FailureRisk> part) {
    double spared = 1;
    for (FailureRisk failure : failures) {
      if (failure.mode() != FailureMode.KINK) {
        spared *= 1 - part.applyAsDouble(failure);
      }
    }
    return 1 - spared;
  }

  /** The sum as a probability with its upper end, to be put into words. */
  Probability probability() {
    return new Probability(breaking, Math.min(breaking, breakingHigh), breakingHigh);
  }
}
