// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.problem;

import java.math.BigDecimal;
import java.math.MathContext;

/** Measured values as the words of a message. */
public final class Amount {
  private static final MathContext SHOWN = new MathContext(5);

  private Amount() {}

  /** A length [m] as millimetres with at most five digits, such as {@code 12.5 mm}. */
  public static String millimetres(double metres) {
    return number(metres, 3) + " mm";
  }

  /** A number with at most five digits and no needless zeros, such as {@code 0.3}. */
  public static String number(double value) {
    return number(value, 0);
  }

  private static String number(double value, int shift) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal shown =
        new BigDecimal(value).movePointRight(shift).round(SHOWN).stripTrailingZeros();
    boolean plain = shown.scale() < 10 && shown.precision() - shown.scale() < 13;
    return plain ? shown.toPlainString() : shown.toString();
  }
}
