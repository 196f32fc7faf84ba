// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.scene.StrainScale;
import java.awt.image.BufferedImage;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LegendTest {
  @ParameterizedTest
  @CsvSource({
    "0.02, '−2, −1, 0, +1, +2'",
    "0.015, '−1.50, −0.75, 0, +0.75, +1.50'",
    "0.001, '−0.10, −0.05, 0, +0.05, +0.10'",
    "0.05, '−5.0, −2.5, 0, +2.5, +5.0'"
  })
  void numbers_areInPerCentWithAsManyDecimalsAsTheyNeed(double limit, String expected) {
    assertThat(String.join(", ", Legend.numbers(new StrainScale(limit)))).isEqualTo(expected);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void title_hasARowOfItsOwn_whereItWouldTouchTheWordsBesideIt(boolean open) {
    StrainScale scale = open ? StrainScale.forPicture(0.9) : new StrainScale(0.02);
    BufferedImage sheet = new BufferedImage(900, 200, BufferedImage.TYPE_INT_ARGB);
    try (Page page = new Page(sheet, 1, UnaryOperator.identity())) {
      assertThat(Legend.more(page, scale, 360)).as("on paper it fits").isZero();
      double half = page.width("bending strain, %", Page.Style.KEY) / 2;
      double side = page.width("stretched", Page.Style.KEY_MORE);
      assertThat(Legend.more(page, scale, 2 * (half + side))).isGreaterThan(18);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1000, 260, 200 mm, 200", "2000, 260, 100 mm, 200", "520, 260, 500 mm, 260",
    "521, 260, 200 mm, 104.2", "100000, 260, 2 mm, 200", "900000, 260, 0.2 mm, 180"
  })
  void scaleBar_isTheLongestRoundLengthThatFits(
      double pixelsPerMetre, double room, String words, double pixels) {
    ScaleBar bar = ScaleBar.fitting(pixelsPerMetre, room);
    assertThat(bar.words()).isEqualTo(words);
    assertThat(bar.pixels()).isCloseTo(pixels, within(1e-9));
  }

  /** An inch is 25.4 mm by definition. */
  @ParameterizedTest
  @CsvSource({"1000, 260, 10 in, 254", "2000, 260, 5 in, 254", "10000, 260, 1 in, 254"})
  void scaleBar_inInches_isRoundInInches(
      double pixelsPerMetre, double room, String words, double pixels) {
    ScaleBar bar = ScaleBar.fitting(pixelsPerMetre, room, LengthUnit.INCH);
    assertThat(bar.words()).isEqualTo(words);
    assertThat(bar.pixels()).isCloseTo(pixels, within(1e-9));
  }

  @Test
  void scaleBar_isAsLongAsItsLengthInTheScale() {
    ScaleBar bar = ScaleBar.fitting(777, 300);
    assertThat(bar.pixels() / 777).isCloseTo(bar.length(), within(1e-12));
  }
}
