// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.physics.trial.Range;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeWordsTest {
  @ParameterizedTest
  @CsvSource({
    "81.3, 124.4, 189, '82 to 188 N, most likely 124 N'",
    "0.52, 0.71, 1.3, '0.52 to 1.30 N, most likely 0.72 N'",
    "812, 1244, 1893, '820 to 1900 N, most likely 1240 N'",
    "25, 25, 25, '25 N'",
    "109.95, 110, 110.1, '110 N'",
    "0, 0, 0, '0.000 N'",
    "0, 0.2, 9, '0.0 to 9.0 N, most likely 0.2 N'"
  })
  void ends_areRoundedToAboutAFewPartsOfTheWidth(
      double low, double middle, double high, String words) {
    assertThat(RangeWords.newtons(new Range(low, middle, high))).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({
    "0.0085, 0.016, 0.0295, '0.85 to 2.95 %, most likely 1.60 %'",
    "0.0098, 0.0246, 0.0617, '1.0 to 6.2 %, most likely 2.4 %'"
  })
  void strain_isInPerCent(double low, double middle, double high, String words) {
    assertThat(RangeWords.percent(new Range(low, middle, high))).isEqualTo(words);
  }
}
