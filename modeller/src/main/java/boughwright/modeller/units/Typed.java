// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A measure as a person types it into a field.
 *
 * @param text all of it, with plain spaces, minus and slash
 * @param unit the unit beside the number in small letters, or the one that was expected
 */
record Typed(String text, String unit) {
  private static final int MOST_CHARACTERS = 100;

  /** A whole number and a fraction, joined by a space, a hyphen or nothing but the fraction. */
  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(?:([0-9]{1,6})[ -]+)?([0-9]{1,6}) ?/ ?([0-9]{1,6})");

  private static final MathContext DIGITS = new MathContext(25);

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
    String plain = plain(typed);
    String unit = Measures.unit(plain).toLowerCase(Locale.ROOT);
    return new Typed(plain, unit.isEmpty() ? usual.toLowerCase(Locale.ROOT) : unit);
  }

  /** Signs of one meaning as one sign: spaces, minus, and fractions that are one character. */
  private static String plain(String typed) {
    StringBuilder out = new StringBuilder();
    for (char sign : typed.toCharArray()) {
      String spelled = Normalizer.normalize(String.valueOf(sign), Normalizer.Form.NFKD);
      if (Character.isSpaceChar(sign) || sign == '\t') {
        out.append(' ');
      } else if (sign == '\u2212') {
        out.append('-');
      } else if (sign == '\u2044') {
        out.append('/');
      } else if (spelled.indexOf('\u2044') > 0) {
        out.append(' ').append(spelled.replace('\u2044', '/')).append(' ');
      } else {
        out.append(sign);
      }
    }
    return out.toString().strip().replaceAll(" +", " ");
  }

  /**
   * The number.
   *
   * @param fractions whether 1 1/2 is one
   */
  BigDecimal number(boolean fractions) throws UnreadableException {
    String number = Measures.number(text);
    Matcher fraction = FRACTION.matcher(number);
    if (!fraction.matches()) {
      return DecimalText.read(number, DecimalMark.EITHER);
    }
    if (!fractions) {
      throw new UnreadableException(
          "fraction",
          Measures.shown(text) + " is a fraction, which is read in inches only",
          "Write a decimal number such as 12.5, or inches such as 1 1/2 in");
    }
    long whole = fraction.group(2) == null ? 0 : Long.parseLong(fraction.group(2));
    long top = Long.parseLong(fraction.group(3));
    long bottom = Long.parseLong(fraction.group(4));
    if (bottom == 0) {
      throw new UnreadableException(
          "fraction", Measures.shown(text) + " is divided by 0", "Write it as 1 1/2 in");
    }
    BigDecimal value =
        BigDecimal.valueOf(whole * bottom + top).divide(BigDecimal.valueOf(bottom), DIGITS);
    return fraction.group(1).equals("-") ? value.negate() : value;
  }

  UnreadableException unknownUnit(String known, String what) {
    return new UnreadableException(
        "unknown-unit",
        Measures.shown(text) + ": " + Measures.shown(unit) + " is no unit of " + what,
        "Use " + known);
  }
}
