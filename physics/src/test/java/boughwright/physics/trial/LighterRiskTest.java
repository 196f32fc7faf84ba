// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against a strength that is lognormal and a demand that is known: p = Phi(ln(d / m) / s). */
class LighterRiskTest {
  /** The 95 % points are made with five digits of the normal quantile. */
  private static final double QUANTILE_DIGITS = 1e-4;

  private static final double MEDIAN = 0.017;
  private static final double SPREAD = 0.35;

  private static double failing(double demand) {
    return 0.5 * Erf.erfc(-Math.log(demand / MEDIAN) / (SPREAD * Math.sqrt(2)));
  }

  private static FailureRisk crack(double demand) {
    double wide = Math.exp(1.64485 * SPREAD);
    double p = failing(demand);
    return new FailureRisk(
        FailureMode.CRACK,
        new Probability(p, p, p),
        Optional.empty(),
        demand,
        new Range(MEDIAN / wide, MEDIAN, MEDIAN * wide));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.9, 0.7, 0.5, 0.3})
  void lighterWork_failsAsLognormalStrengthSays(double ratio) {
    Probability lighter = LighterRisk.moved(crack(0.012), ratio);
    assertThat(lighter.p()).isCloseTo(failing(0.012 * ratio), within(QUANTILE_DIGITS));
  }

  @Test
  void noWorkAtAll_failsNever() {
    assertThat(LighterRisk.moved(crack(0.012), 0)).isEqualTo(new Probability(0, 0, 0));
  }
}
