// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.wood.Doubt;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Against the closed form of a normal margin, with the distribution of Hipparchus. */
class FailureOddsTest {
  private static final Doubt DOUBT = new Doubt(0.35, 0.12);
  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** The tails beyond four standard deviations, and rounding. */
  private static final double RULE_ERROR = 1e-4;

  private static Draws draws(int fallen, double... margins) {
    double[][][] all = new double[margins.length][FailureMode.values().length][1];
    for (int n = 0; n < margins.length; n++) {
      for (double[] row : all[n]) {
        row[0] = margins[n];
      }
    }
    return new Draws(all, fallen, new double[margins.length][0], new DrawTally(0));
  }

  @Test
  void oneMargin_failsAsOftenAsItsNormalSays() {
    for (double margin : new double[] {-1.2, -0.6, -0.2, 0, 0.3, 0.8}) {
      Probability found = new FailureOdds(FailureMode.CRACK, DOUBT).of(List.of(draws(0, margin)));
      assertThat(found.p())
          .isCloseTo(NORMAL.cumulativeProbability(margin / DOUBT.total()), within(RULE_ERROR));
    }
  }

  @Test
  void interval_holdsTheMiddleNineTenthsOfWhatIsNotKnown() {
    double margin = -0.5;
    Probability found = new FailureOdds(FailureMode.CRACK, DOUBT).of(List.of(draws(0, margin)));
    double at95 = NORMAL.inverseCumulativeProbability(0.95) * DOUBT.unknown();
    double high = NORMAL.cumulativeProbability((margin + at95) / DOUBT.varies());
    double low = NORMAL.cumulativeProbability((margin - at95) / DOUBT.varies());
    assertThat(found.high()).isCloseTo(high, within(0.06));
    assertThat(found.low()).isCloseTo(low, within(1e-3));
  }

  @Test
  void drawsWithoutAPose_countAsCracked() {
    Probability found =
        new FailureOdds(FailureMode.CRACK, DOUBT).of(List.of(draws(3, -9), draws(1, -9, -9, -9)));
    assertThat(found.p()).isCloseTo((0.75 + 0.25) / 2, within(1e-9));
    Probability kink = new FailureOdds(FailureMode.KINK, DOUBT).of(List.of(draws(4)));
    assertThat(kink.p()).isZero();
  }

  @Test
  void twoLimbs_failWhenEitherDoes() {
    double[][][] margins = new double[1][FailureMode.values().length][];
    Arrays.fill(margins[0], new double[] {-0.2, -0.1});
    Doubt known = new Doubt(0, 0.2);
    Probability found =
        new FailureOdds(FailureMode.CRACK, known)
            .of(List.of(new Draws(margins, 0, new double[1][0], new DrawTally(0))));
    double neither = NORMAL.cumulativeProbability(1) * NORMAL.cumulativeProbability(0.5);
    assertThat(found.p()).isCloseTo(1 - neither, within(1e-9));
  }

  @Test
  void tally_findsTheShareOfEachInput() {
    java.util.Random random = new java.util.Random(3);
    DrawTally[] parts = {new DrawTally(2), new DrawTally(2)};
    IntStream.range(0, 40_000)
        .forEach(
            n -> {
              double[] inputs = {random.nextGaussian(), random.nextGaussian()};
              parts[n % 2].note(0.6 * inputs[0] - 0.8 * inputs[1] + 7, inputs);
            });
    DrawTally all = new DrawTally(2);
    all.add(parts[0]);
    all.add(parts[1]);
    assertThat(all.variance()).isCloseTo(1, within(0.03));
    assertThat(all.share(0)).isCloseTo(0.36, within(0.02));
    assertThat(all.share(1)).isCloseTo(0.64, within(0.02));
  }
}
