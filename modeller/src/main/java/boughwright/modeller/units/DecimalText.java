// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * Reads plain decimal numbers as people write them: digits 0 to 9, one decimal point or comma, a
 * sign. No exponents, no hexadecimal, no separators between thousands, no other digits.
 */
public final class DecimalText {
  /** Digits a number may have: more than any tape, fewer than would stall the arithmetic. */
  static final int MOST_DIGITS = 20;

  private static final Pattern PLAIN = Pattern.compile("[+-]?(?:[0-9]+|[0-9]*[.,][0-9]+)");
  private static final String REMEDY = "Write a plain number such as 12.5";

  private DecimalText() {}

  /**
   * The number a text shows. Where the decimal mark is not known, a single comma with three digits
   * after it (1,234) is refused, since it can be read both ways.
   *
   * @throws UnreadableException if the text is no plain number or has another decimal mark
   */
  public static BigDecimal read(String text, DecimalMark mark) throws UnreadableException {
    String number = text.strip();
    requirePlain(number);
    if (mark == DecimalMark.EITHER && DecimalMark.isDoubtful(number)) {
      throw new UnreadableException(
          "ambiguous-number",
          Measures.shown(number) + " can be read in two ways, with a decimal comma or as thousands",
          "Write it without a separator, or with a decimal point");
    }
    if (mark == DecimalMark.POINT && number.indexOf(',') >= 0) {
      throw mixed(number, "comma where a decimal point is expected");
    }
    if (mark == DecimalMark.COMMA && number.indexOf('.') >= 0) {
      throw mixed(number, "point where the other numbers have a decimal comma");
    }
    return new BigDecimal(number.replace(',', '.'));
  }

  private static UnreadableException mixed(String number, String found) {
    return new UnreadableException(
        "mixed-decimal-marks",
        Measures.shown(number) + " has a " + found,
        "Use one decimal mark throughout, and none between thousands");
  }

  private static void requirePlain(String number) throws UnreadableException {
    boolean plain = PLAIN.matcher(number).matches();
    if (plain && number.chars().filter(Character::isDigit).count() <= MOST_DIGITS) {
      return;
    }
    String shown = Measures.shown(number);
    if (number.isEmpty()) {
      throw new UnreadableException("not-a-number", "there is no number", REMEDY);
    }
    OptionalInt strange = number.codePoints().filter(point -> point > '~').findFirst();
    if (strange.isPresent()) {
      String code = String.format(Locale.ROOT, "U+%04X", strange.getAsInt());
      throw new UnreadableException(
          "not-a-number",
          shown + " has the character " + code + ", only digits 0 to 9 and a plain minus are read",
          REMEDY);
    }
    if (plain) {
      throw new UnreadableException(
          "number-too-long", shown + " has more than " + MOST_DIGITS + " digits", REMEDY);
    }
    if (number.matches("[+-]?[0-9]+(?:[.,' ][0-9]+){2,}|[+-]?[0-9]+[' ][0-9]+")) {
      throw new UnreadableException(
          "ambiguous-number",
          shown + " has more than one separator, or one between thousands",
          "Write it with a decimal mark only, such as 1234.5");
    }
    throw new UnreadableException("not-a-number", shown + " is not a plain decimal number", REMEDY);
  }
}
