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
    if (!Double.isFinite(metres)) {
      return metres + " mm";
    }
    BigDecimal shown = new BigDecimal(metres).movePointRight(3).round(SHOWN).stripTrailingZeros();
    boolean plain = shown.scale() < 10 && shown.precision() - shown.scale() < 13;
    return (plain ? shown.toPlainString() : shown.toString()) + " mm";
  }
}
