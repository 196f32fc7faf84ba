// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tabulated response of a round section against {@link FibreIntegral}. */
class BentDiscTest {
  /** What is asked of the table. */
  private static final double TABLE = 1e-7;

  /** Beyond the table, at strains of a quarter and more that no wood sees. */
  private static final double BEYOND = 2e-3;

  private static final double DISC = Math.PI / 4;

  @ParameterizedTest
  @ValueSource(
      doubles = {0.3, 0.999, 1.0001, 1.003, 1.02, 1.1, 1.3, 1.77, 2, 2.9, 4, 7.3, 12, 30, 71, 99})
  void response_isThatOfTheFibres(double x) {
    FibreIntegral.Bent bent = FibreIntegral.DISC.at(x);
    assertThat(BentDisc.moment(x)).isCloseTo(bent.moment() / DISC, within(TABLE * x));
    assertThat(BentDisc.tension(x)).isCloseTo(bent.tension(), within(TABLE * x));
    assertThat(2 * x - BentDisc.tension(x)).isCloseTo(bent.compression(), within(TABLE * x));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.0001, 1.003, 1.1, 1.77, 2.9, 7.3, 30, 71, 150})
  void slopeAndMoment_areRatesOfMomentAndEnergy(double x) {
    // central differences of a step h leave h^2 and rounding / h
    double h = 1e-5 * x;
    double slope = (BentDisc.moment(x + h) - BentDisc.moment(x - h)) / (2 * h);
    double moment = (BentDisc.energy(x + h) - BentDisc.energy(x - h)) / (2 * h);
    assertThat(BentDisc.slope(x)).isCloseTo(slope, within(1e-6));
    assertThat(BentDisc.moment(x)).isCloseTo(moment, within(1e-7));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.2, 3, 20, 90})
  void energy_isWhatTheClosedFormSays(double x) {
    double low = 0.1;
    double high = Math.PI;
    for (int n = 0; n < 80; n++) {
      double middle = (low + high) / 2;
      low = DiscSegment.of(middle).curvature() > x ? middle : low;
      high = low == middle ? high : middle;
    }
    assertThat(BentDisc.energy(x))
        .isCloseTo(DiscSegment.of(low).energy(), within(TABLE * BentDisc.energy(x)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {110, 200, 1000})
  void beyondTheTable_thePowersStayNear(double x) {
    FibreIntegral.Bent bent = FibreIntegral.DISC.at(x);
    assertThat(BentDisc.moment(x)).isCloseTo(bent.moment() / DISC, within(BEYOND * 4));
    assertThat(BentDisc.tension(x)).isCloseTo(bent.tension(), within(20 * BEYOND * x));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 1 + 1e-9, 1.01, 1.5, 2.2, 8, 50, 100.9, 101.1, 900})
  void inverses_leadBack(double x) {
    assertThat(BentDisc.curvatureUnder(BentDisc.moment(x))).isCloseTo(x, within(1e-10 * x));
    assertThat(BentDisc.curvatureAtTension(BentDisc.tension(x))).isCloseTo(x, within(1e-10 * x));
  }

  @Test
  void moment_neverComesToFour() {
    assertThat(BentDisc.moment(BentDisc.FARTHEST)).isLessThan(4).isGreaterThan(3.9);
    assertThat(BentDisc.curvatureUnder(4)).isEqualTo(BentDisc.FARTHEST);
    assertThat(BentDisc.curvatureUnder(7)).isEqualTo(BentDisc.FARTHEST);
  }
}
