// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DisplayUnitsTest {
  private static final DisplayUnits METRIC = DisplayUnits.USUAL;
  private static final DisplayUnits KILOGRAMS =
      new DisplayUnits(LengthUnit.MILLIMETRE, ForceUnit.KILOGRAM_FORCE);
  private static final DisplayUnits INCHES =
      new DisplayUnits(LengthUnit.INCH, ForceUnit.POUND_FORCE);

  @ParameterizedTest
  @CsvSource({
    "0.0123, 12.3 mm, 0.48 in",
    "0.012, 12.0 mm, 0.47 in",
    "0.00035, 0.35 mm, 0.014 in",
    "0, 0 mm, 0 in",
    "-0.003, -3.0 mm, -0.12 in",
    "1.2345, 1235 mm, 48.60 in"
  })
  void length_isShownInTheUnitOfThePerson(double metres, String metric, String inches) {
    assertThat(METRIC.length(metres)).isEqualTo(metric);
    assertThat(INCHES.length(metres)).isEqualTo(inches);
  }

  @ParameterizedTest
  @CsvSource({"24, 24 N, 2.4 kgf, 5.4 lbf", "0.5, 0.50 N, 0.05 kgf, 0.11 lbf"})
  void force_isShownInTheUnitOfThePerson(
      double newtons, String metric, String kilograms, String pounds) {
    assertThat(METRIC.force(newtons)).isEqualTo(metric);
    assertThat(KILOGRAMS.force(newtons)).isEqualTo(kilograms);
    assertThat(INCHES.force(newtons)).isEqualTo(pounds);
  }

  /**
   * NIST SP 811, Appendix B.8, from memory: 1 lbf in = 0.112 984 8 N m and 1 kgf m = 9.806 65 N m.
   */
  @Test
  void moment_isShownInUnitsMadeOfThoseOfThePerson() {
    assertThat(METRIC.moment(3.4)).isEqualTo("3.4 N\u00B7m");
    assertThat(INCHES.moment(0.1129848 * 25)).isEqualTo("25.0 lbf\u00B7in");
    assertThat(KILOGRAMS.moment(9.80665 * 0.5)).isEqualTo("50.0 kgf\u00B7cm");
  }

  @Test
  void mass_isShownInPounds_whenForcesAre() {
    assertThat(METRIC.mass(0.2)).isEqualTo("0.20 kg");
    assertThat(INCHES.mass(0.45359237 * 3)).isEqualTo("3.0 lb");
  }

  @Test
  void angle_isShownInDegrees() {
    assertThat(METRIC.angle(Math.PI / 2)).isEqualTo("90\u00B0");
    assertThat(METRIC.angle(Math.toRadians(-12.5))).isEqualTo("-12.5\u00B0");
    assertThat(METRIC.angle(-0.0)).isEqualTo("0\u00B0");
  }

  /** 9.96 mm and 10 mm both round to 10.0 mm, whichever side of a step they come from. */
  @Test
  void valuesThatRoundAlike_lookAlike() {
    assertThat(METRIC.length(0.9996e-3)).isEqualTo(METRIC.length(1e-3));
    assertThat(METRIC.length(99.99e-3)).isEqualTo(METRIC.length(100e-3));
    assertThat(METRIC.force(9.97)).isEqualTo(METRIC.force(10));
    assertThat(INCHES.length(0.09996 * 0.0254)).isEqualTo(INCHES.length(0.1 * 0.0254));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "12|0.012",
        "12.3 mm|0.0123",
        "3,5 cm|0.035",
        "3.5cm|0.035",
        "1 1/2 in|0.0381",
        "1-1/2 in|0.0381",
        "1\u00BD in|0.0381",
        "1 \u00BD\"|0.0381",
        "\u00BDin|0.0127",
        "3/8\"|0.009525",
        "3\u20448 in|0.009525",
        "-1 1/2 in|-0.0381",
        "\u22125|-0.005",
        "24\u00A0mm|0.024",
        "1 inch|0.0254",
        "0,8 MM|0.0008"
      })
  void length_isReadAsPeopleTypeIt(String text, double metres) throws UnreadableException {
    assertThat(METRIC.readLength(text)).isEqualTo(metres);
  }

  @Test
  void number_isInTheUnitOfThePerson_whenNoneStandsBesideIt() throws UnreadableException {
    assertThat(INCHES.readLength("1 1/2")).isEqualTo(0.0381);
    assertThat(INCHES.readLength("2.5")).isEqualTo(0.0635);
    assertThat(INCHES.readForce("2")).isEqualTo(2 * 4.4482216152605);
    assertThat(KILOGRAMS.readForce("2,5")).isCloseTo(24.516625, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "24|24",
        "24 N|24",
        "1 kgf|9.80665",
        "1 kg|9.80665",
        "1 lb|4.4482216152605",
        "1 LBF|4.4482216152605"
      })
  void force_isReadAsPeopleTypeIt(String text, double newtons) throws UnreadableException {
    assertThat(METRIC.readForce(text)).isEqualTo(newtons);
  }

  @Test
  void massAndAngle_areReadAsPeopleTypeThem() throws UnreadableException {
    assertThat(METRIC.readMass("200 g")).isEqualTo(0.2);
    assertThat(METRIC.readMass("0,2")).isEqualTo(0.2);
    assertThat(METRIC.readMass("1 lb")).isEqualTo(0.45359237);
    assertThat(METRIC.readAngle("-12,5\u00B0")).isEqualTo(Math.toRadians(-12.5));
    assertThat(METRIC.readAngle("35 deg")).isEqualTo(Math.toRadians(35));
    assertThat(METRIC.readAngle("35 degrees")).isEqualTo(Math.toRadians(35));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "mm",
        "abc",
        "1/2",
        "1 1/2 mm",
        "1/0 in",
        "1 2 in",
        "1/2/3 in",
        "1,234",
        "1.234,5",
        "12 N",
        "24 furlong",
        "1e3",
        "NaN",
        "0x1F",
        "--3",
        "\u0662\u0664",
        "1\u00BD\u00BD in"
      })
  void length_isRefused_inOneClearLine(String text) {
    assertThatThrownBy(() -> METRIC.readLength(text))
        .isInstanceOf(UnreadableException.class)
        .satisfies(e -> assertThat(e.getMessage()).hasSizeBetween(10, 120).doesNotContain("\n"));
  }

  @Test
  void text_isRefused_whenItIsLong() {
    assertThatThrownBy(() -> METRIC.readLength("1".repeat(1_000_000)))
        .isInstanceOf(UnreadableException.class)
        .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(100));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/2 N", "12 mm", "", "N"})
  void force_isRefused_whenItIsNone(String text) {
    assertThatThrownBy(() -> METRIC.readForce(text)).isInstanceOf(UnreadableException.class);
  }

  @Test
  void textToEdit_readsBackAsTheSameValue() throws UnreadableException {
    Random random = new Random(5);
    for (int k = 0; k < 500; k++) {
      BigDecimal typed = BigDecimal.valueOf(random.nextInt(2_000_000) - 500_000, 3);
      double metres = METRIC.readLength(typed.toPlainString());
      assertThat(METRIC.readLength(METRIC.lengthToEdit(metres))).isEqualTo(metres);
      double inches = INCHES.readLength(typed.toPlainString());
      assertThat(INCHES.readLength(INCHES.lengthToEdit(inches))).isEqualTo(inches);
      double newtons = INCHES.readForce(typed.toPlainString());
      assertThat(INCHES.readForce(INCHES.forceToEdit(newtons))).isEqualTo(newtons);
      double angle = METRIC.readAngle(typed.toPlainString());
      assertThat(METRIC.readAngle(METRIC.angleToEdit(angle))).isEqualTo(angle);
    }
  }

  @Test
  void whatIsShown_readsBackAsWhatIsShown() throws UnreadableException {
    Random random = new Random(6);
    for (DisplayUnits units : new DisplayUnits[] {METRIC, KILOGRAMS, INCHES}) {
      for (int k = 0; k < 500; k++) {
        double value = Math.exp(14 * random.nextDouble() - 9);
        String length = units.length(value);
        assertThat(units.length(units.readLength(length))).isEqualTo(length);
        String force = units.force(value);
        assertThat(units.force(units.readForce(force))).isEqualTo(force);
      }
    }
  }

  @Test
  void sentence_isToldInOtherUnits_andLeftAloneInItsOwn() {
    String told = "A kink, 254 mm from the union; g1 pulls 44.482 N, about 1 in 40, 3.2 N·m.";

    assertThat(DisplayUnits.USUAL.inWords(told)).isEqualTo(told);
    assertThat(new DisplayUnits(LengthUnit.INCH, ForceUnit.POUND_FORCE).inWords(told))
        .isEqualTo("A kink, 10.00 in from the union; g1 pulls 10.0 lbf, about 1 in 40, 3.2 N·m.");
  }

  @Test
  void range_isToldInOtherUnits() {
    DisplayUnits others = new DisplayUnits(LengthUnit.INCH, ForceUnit.POUND_FORCE);

    assertThat(others.inWords("line g1: 44.482 to 88.964 N"))
        .isEqualTo("line g1: 10.0 to 20.0 lbf");
    assertThat(others.inWords("6.2-44.482 N")).isEqualTo("1.4-10.0 lbf");
    assertThat(others.inWords("25.4\u2013254 mm")).isEqualTo("1.00\u201310.00 in");
  }
}
