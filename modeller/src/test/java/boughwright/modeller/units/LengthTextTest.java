// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "24|0.024",
        "24.5|0.0245",
        ".5|0.0005",
        "-3|-0.003",
        "+3|0.003",
        " 24 |0.024",
        "24 mm|0.024",
        "24mm|0.024",
        "2.4 cm|0.024",
        "1 in|0.0254",
        "1\"|0.0254",
        "0.5 inch|0.0127",
        "1.2 m|1.2",
        "1\u201D|0.0254",
        "1 1/2 in|0.0381",
        "3/8\"|0.009525",
        "1\u00BD in|0.0381"
      })
  void length_isRead(String text, double metres) throws UnreadableException {
    assertThat(LengthText.read(text, LengthUnit.MILLIMETRE, DecimalMark.POINT).metres())
        .isEqualTo(metres);
  }

  @Test
  void fraction_isRead_whereInchesAreMeant() throws UnreadableException {
    assertThat(LengthText.read("1 1/2", LengthUnit.INCH, DecimalMark.COMMA).metres())
        .isEqualTo(0.0381);
    assertThatThrownBy(() -> LengthText.read("1 1/2 mm", LengthUnit.INCH, DecimalMark.POINT))
        .isInstanceOf(UnreadableException.class);
    assertThatThrownBy(() -> LengthText.read("1/0", LengthUnit.INCH, DecimalMark.POINT))
        .hasMessageContaining("0");
  }

  @Test
  void unitBesideTheNumber_countsAndIsTold() throws UnreadableException {
    LengthText.Reading reading = LengthText.read("2,5 cm", LengthUnit.INCH, DecimalMark.COMMA);
    assertThat(reading.metres()).isEqualTo(0.025);
    assertThat(reading.written()).contains(LengthUnit.CENTIMETRE);
    assertThat(LengthText.read("2", LengthUnit.INCH, DecimalMark.COMMA).written()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0x1F",
        "0x1.8p3",
        "1e400",
        "1e3",
        "1E-12",
        "NaN",
        "Infinity",
        "-Infinity",
        "\u0662\u0664",
        "\uFF12\uFF14",
        "\u22125",
        "2\u0664",
        "1,234.5",
        "1.234,5",
        "1'234",
        "1 234",
        "1,2,3",
        "12.",
        "",
        " ",
        "mm",
        "abc",
        "--3",
        "1/2",
        "1d",
        "24 furlong",
        "24\u00A0mm",
        "\u0664 mm",
        "123456789012345678901",
        "1.5f",
        "24\u0000"
      })
  void text_isRefused_whenItIsNoPlainLength(String text) {
    for (DecimalMark mark : DecimalMark.values()) {
      assertThatThrownBy(() -> LengthText.read(text, LengthUnit.MILLIMETRE, mark))
          .isInstanceOf(UnreadableException.class);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\u0662\u0664|U+0662",
        "\u22125|U+2212",
        "24 furlong|furlong",
        "1,234.5|separator",
        "0x1F|0x1",
        "12,5|decimal point"
      })
  void fault_namesWhatIsWrong(String text, String named) {
    assertThatThrownBy(() -> LengthText.read(text, LengthUnit.MILLIMETRE, DecimalMark.POINT))
        .hasMessageContaining(named);
  }

  @Test
  void fault_staysShort_whenTheTextIsLong() {
    String text = "n1".repeat(150_000);
    assertThatThrownBy(() -> LengthText.read(text, LengthUnit.MILLIMETRE, DecimalMark.POINT))
        .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(100));
  }

  @Test
  void fault_getsItsPlaceFromTheCaller() {
    try {
      LengthText.metres("24");
      throw new AssertionError("a length without a unit was read");
    } catch (UnreadableException e) {
      Problem problem = e.at(Place.of("--length"));
      assertThat(problem.kind()).isEqualTo("no-unit");
      assertThat(problem.line()).startsWith("--length: \"24\" has no unit.");
    }
  }

  @Test
  void lengthWithItsUnit_isReadWithEitherMark() throws UnreadableException {
    assertThat(LengthText.metres("0,8 mm")).isEqualTo(0.0008);
    assertThat(LengthText.metres("0.8 mm")).isEqualTo(0.0008);
    assertThatThrownBy(() -> LengthText.metres("1,234 mm")).hasMessageContaining("two ways");
  }

  @Test
  void decimalMark_isFoundFromAllNumbersTogether() {
    assertThat(DecimalMark.of(List.of("12", "1,250", "12,5"))).isEqualTo(DecimalMark.COMMA);
    assertThat(DecimalMark.of(List.of("12", "0,250 mm"))).isEqualTo(DecimalMark.COMMA);
    assertThat(DecimalMark.of(List.of("12", "1.250", "x"))).isEqualTo(DecimalMark.POINT);
    assertThat(DecimalMark.of(List.of("12", "1,250"))).isEqualTo(DecimalMark.EITHER);
    assertThat(DecimalMark.of(List.of("1,234.5"))).isEqualTo(DecimalMark.POINT);
  }

  @Test
  void angle_isReadInDegrees() throws UnreadableException {
    assertThat(AngleText.degrees("35", DecimalMark.POINT)).isEqualTo(35);
    assertThat(AngleText.degrees("-12,5\u00B0", DecimalMark.COMMA)).isEqualTo(-12.5);
    assertThat(AngleText.degrees("35 deg", DecimalMark.POINT)).isEqualTo(35);
  }

  @ParameterizedTest
  @ValueSource(strings = {"35 gon", "NaN", "", "35%", "1.2 rad"})
  void angle_isRefused_whenItIsNotInDegrees(String text) {
    assertThatThrownBy(() -> AngleText.degrees(text, DecimalMark.POINT))
        .isInstanceOf(UnreadableException.class);
  }
}
