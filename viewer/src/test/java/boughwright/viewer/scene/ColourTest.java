// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourTest {
  /** The published values have two decimals, the conversion matrix four digits. */
  private static final double PRINTED = 0.05;

  /**
   * L*a*b* (D65) of the corners of sRGB, as printed by many converters, among them
   * brucelindbloom.com; from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "FFFFFF, 100.00, 0.00, 0.00",
    "FF0000, 53.24, 80.09, 67.20",
    "00FF00, 87.73, -86.18, 83.18",
    "0000FF, 32.30, 79.19, -107.86",
    "000000, 0.00, 0.00, 0.00"
  })
  void lab_agreesWithPublishedValues(String hex, double lightness, double a, double b) {
    Lab lab = Colour.ofHex(Integer.parseInt(hex, 16)).lab();
    assertThat(lab.lightness()).isCloseTo(lightness, within(PRINTED));
    assertThat(lab.a()).isCloseTo(a, within(PRINTED));
    assertThat(lab.b()).isCloseTo(b, within(PRINTED));
  }

  @Test
  void ofLab_givesTheColourBack() {
    Colour colour = Colour.ofHex(0x8C7B6B);
    assertThat(Colour.of(colour.lab()).rgb()).isEqualTo(0x8C7B6B);
  }

  @Test
  void parts_outsideZeroToOne_areRefused() {
    assertThatThrownBy(() -> new Colour(0, 1.01, 0)).hasMessageContaining("green is 1.01");
  }
}
