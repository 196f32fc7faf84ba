// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * A measure as a person types it into a field.
 *
 * @param text all of it, with plain spaces, minus and slash
 * @param unit the unit beside the number in small letters, or the one that was expected
 */
record Typed(String text, String unit) {
  private static final int MOST_CHARACTERS = 100;

  /**
   * Takes a measure apart.
   *
   * @param usual the unit that is meant where none stands beside the number
   */
  static Typed of(String typed, String usual) throws UnreadableException {
    if (typed.length() > MOST_CHARACTERS) {
      throw new UnreadableException(
          "not-a-number", Measures.shown(typed) + " is no measure", "Write it shorter: 12.5");
    }
    String plain = Fraction.plain(typed);
    String unit = Measures.unit(plain).toLowerCase(Locale.ROOT);
    return new Typed(plain, unit.isEmpty() ? usual.toLowerCase(Locale.ROOT) : unit);
  }

  /**
   * The number.
   *
   * @param fractions whether 1 1/2 is one
   */
  BigDecimal number(boolean fractions) throws UnreadableException {
    String number = Measures.number(text);
    if (!Fraction.is(number)) {
      return DecimalText.read(number, DecimalMark.EITHER);
    }
    if (fractions) {
      return Fraction.read(number);
    }
    throw new UnreadableException(
        "fraction",
        Measures.shown(text) + " is a fraction, which is read in inches only",
        "Write a decimal number such as 12.5, or inches such as 1 1/2 in");
  }

  UnreadableException unknownUnit(String known, String what) {
    return new UnreadableException(
        "unknown-unit",
        Measures.shown(text) + ": " + Measures.shown(unit) + " is no unit of " + what,
        "Use " + known);
  }
}
