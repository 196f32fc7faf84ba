// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads numbers as an inch tape shows them: 3/8, 1 1/2, 1-1/2, or with a sign for the fraction. */
final class Fraction {
  /** A whole number and a fraction, joined by a space, a hyphen or nothing but the fraction. */
  private static final Pattern MIXED =
      Pattern.compile("([+-]?)(?:([0-9]{1,6})[ -]+)?([0-9]{1,6}) ?/ ?([0-9]{1,6})");

  private static final MathContext DIGITS = new MathContext(25);

  private Fraction() {}

  static boolean is(String number) {
    return MIXED.matcher(number).matches();
  }

  /**
   * The number a fraction shows.
   *
   * @param number a text that {@link #is} one
   */
  static BigDecimal read(String number) throws UnreadableException {
    Matcher mixed = MIXED.matcher(number);
    if (!mixed.matches()) {
      throw new IllegalArgumentException(number);
    }
    long whole = mixed.group(2) == null ? 0 : Long.parseLong(mixed.group(2));
    long top = Long.parseLong(mixed.group(3));
    long bottom = Long.parseLong(mixed.group(4));
    if (bottom == 0) {
      throw new UnreadableException(
          "fraction", Measures.shown(number) + " is divided by 0", "Write it as 1 1/2 in");
    }
    BigDecimal value =
        BigDecimal.valueOf(whole * bottom + top).divide(BigDecimal.valueOf(bottom), DIGITS);
    return mixed.group(1).equals("-") ? value.negate() : value;
  }

  /** Signs of one meaning as one sign: spaces, minus, and fractions that are one character. */
  static String plain(String typed) {
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
}
