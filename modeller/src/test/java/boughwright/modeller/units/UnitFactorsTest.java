// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors against A. Thompson and B. N. Taylor 2008, Guide for the Use of the International System
 * of Units, NIST Special Publication 811, Appendix B.8 (factors listed alphabetically), <a
 * href="https://doi.org/10.6028/NIST.SP.811e2008">doi:10.6028/NIST.SP.811e2008</a>. Figures from
 * memory, those for forces and degrees compared with published copies of that table.
 */
class UnitFactorsTest {
  /** Half of the last of the seven digits the table prints. */
  private static final double PRINTED_DIGITS = 0.5e-6;

  @ParameterizedTest
  @CsvSource({"INCH, 2.54E-02", "MILLIMETRE, 1E-03", "CENTIMETRE, 1E-02", "METRE, 1"})
  void lengthFactor_isTheExactOneOfTheTable(LengthUnit unit, double metres) {
    assertThat(unit.toMetres(1)).isEqualTo(metres);
  }

  /** The table prints kilogram-force 9.806 65 E+00 (exact) and pound-force 4.448 222 E+00. */
  @ParameterizedTest
  @CsvSource({"NEWTON, 1", "KILOGRAM_FORCE, 9.80665", "POUND_FORCE, 4.448222"})
  void forceFactor_agreesWithTheTable(ForceUnit unit, double newtons) {
    assertThat(unit.toNewtons(1)).isCloseTo(newtons, within(PRINTED_DIGITS));
  }

  /** Footnote 23 of the table: the exact conversion factor is 4.448 221 615 260 5. */
  @Test
  void poundForce_isTheExactOneOfTheFootnote() {
    assertThat(ForceUnit.POUND_FORCE.toNewtons(1)).isEqualTo(4.4482216152605);
  }

  /** The table prints pound (avoirdupois) 4.535 924 E-01 kg. */
  @Test
  void pound_agreesWithTheTable() {
    assertThat(Factor.POUND.toSi(1)).isCloseTo(4.535924e-1, within(0.1 * PRINTED_DIGITS));
  }

  @ParameterizedTest
  @CsvSource({"58.3", "0.1", "0.8", "1234.567", "16.000001", "-3.3"})
  void length_comesBackAsWritten_inEveryUnit(double value) {
    for (LengthUnit unit : LengthUnit.values()) {
      assertThat(unit.fromMetres(unit.toMetres(value))).isEqualTo(value);
    }
  }

  /** Five eighths of an inch are 15.875 mm, and 12 lbf are 53.3786... N: worked by hand. */
  @Test
  void conversion_goesTheRightWay() {
    assertThat(LengthUnit.INCH.toMetres(0.625)).isEqualTo(0.015875);
    assertThat(LengthUnit.MILLIMETRE.fromMetres(0.015875)).isEqualTo(15.875);
    assertThat(ForceUnit.POUND_FORCE.fromNewtons(53.378659383126)).isEqualTo(12);
  }

  @ParameterizedTest
  @CsvSource({"mm, MILLIMETRE", "CM, CENTIMETRE", "m, METRE", "in, INCH", "Inch, INCH"})
  void unit_isFoundByName_whateverItsCase(String name, LengthUnit unit) {
    assertThat(LengthUnit.named(name)).contains(unit);
  }

  @Test
  void unit_isNotFound_whenNobodyMeasuresTreesInIt() {
    assertThat(LengthUnit.named("furlong")).isEmpty();
    assertThat(LengthUnit.named("")).isEmpty();
  }
}
