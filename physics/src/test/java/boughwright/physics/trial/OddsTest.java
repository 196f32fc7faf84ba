// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OddsTest {
  @ParameterizedTest
  @CsvSource({
    "0, less than 1 in 1000",
    "0.0009, less than 1 in 1000",
    "0.001, about 1 in 1000",
    "0.02, about 1 in 50",
    "0.033, about 1 in 30",
    "0.0714, about 1 in 14",
    "0.34, about 1 in 3",
    "0.5, about 1 in 2",
    "0.667, about 2 in 3",
    "0.967, about 19 in 20",
    "0.98, about 49 in 50",
    "0.995, almost certain",
    "1, almost certain"
  })
  void probability_readsAsPlainOdds(double p, String words) {
    assertThat(Odds.words(p)).isEqualTo(words);
  }

  @Test
  void doubt_isSaidAsWhatItCouldBe() {
    assertThat(Odds.words(new Probability(0.033, 0.01, 0.07)))
        .isEqualTo("about 1 in 30, could be 1 in 14");
  }

  @ParameterizedTest
  @CsvSource({
    "0.0335, 0.02, 0.0333, about 1 in 30",
    "0.0001, 0, 0.0004, less than 1 in 1000",
    "0.0001, 0, 0.02, 'less than 1 in 1000, could be 1 in 50'",
    "0.6, 0.3, 1, 'about 3 in 5, could be almost certain'"
  })
  void doubt_isSaidOnlyWhereItReadsDifferently(double p, double low, double high, String words) {
    assertThat(Odds.words(new Probability(p, low, high))).isEqualTo(words);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
  void oddsOfNoProbability_areRefused(double p) {
    assertThatIllegalArgumentException().isThrownBy(() -> Odds.words(p));
  }
}
