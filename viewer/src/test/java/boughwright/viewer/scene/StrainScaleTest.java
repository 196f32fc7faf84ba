// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StrainScaleTest {
  private static final double LIMIT = 0.02;
  private static final StrainScale SCALE = new StrainScale(LIMIT);

  @ParameterizedTest
  @EnumSource(Vision.class)
  void lightness_risesAllAlong_forEveryVision(Vision vision) {
    double before = -1;
    for (int n = -50; n <= 50; n++) {
      double lightness = vision.sees(SCALE.colour(LIMIT * n / 50)).lightness();
      assertThat(lightness).as("step %d", n).isGreaterThan(before);
      before = lightness;
    }
  }

  @ParameterizedTest
  @EnumSource(Vision.class)
  void quartersOfTheScale_areToldApart_byEveryVision(Vision vision) {
    List<Lab> seen =
        IntStream.rangeClosed(-4, 4)
            .mapToObj(n -> vision.sees(SCALE.colour(LIMIT * n / 4)))
            .toList();
    for (int i = 0; i < seen.size(); i++) {
      for (int j = i + 1; j < seen.size(); j++) {
        assertThat(seen.get(i).difference(seen.get(j)))
            .as("%d, %d", i, j)
            .isGreaterThan(Vision.PLAIN);
      }
    }
  }

  @Test
  void woodAtRest_hasTheColourOfBark() {
    assertThat(SCALE.colour(0).rgb()).isEqualTo(Palette.BARK.rgb());
  }

  @Test
  void colour_beyondTheLimit_staysThatOfTheLimit() {
    assertThat(SCALE.colour(3 * LIMIT)).isEqualTo(SCALE.colour(LIMIT));
    assertThat(SCALE.colour(-3 * LIMIT)).isEqualTo(SCALE.colour(-LIMIT));
  }

  /** A notch that is strained by 14 % must not leave the rest of the tree without colour. */
  @Test
  void forPicture_endsAtThreePerCent_andSaysSo() {
    assertThat(StrainScale.forPicture(0.14).limit()).isCloseTo(0.03, within(1e-12));
    assertThat(StrainScale.forPicture(0.14).isOpen()).isTrue();
    assertThat(StrainScale.forPicture(0.004).limit()).isCloseTo(0.004, within(1e-12));
    assertThat(StrainScale.forPicture(0.004).isOpen()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "0.0121, 0.015",
    "0.015, 0.015",
    "0.0151, 0.02",
    "0.0355, 0.04",
    "0.0801, 0.1",
    "0, 0.001",
    "0.3, 0.3",
    "1.7, 2"
  })
  void forPeak_takesTheNextRoundLimit(double peak, double limit) {
    assertThat(StrainScale.forPeak(peak).limit()).isCloseTo(limit, within(1e-12));
  }
}
