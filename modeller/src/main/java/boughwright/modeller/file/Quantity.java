// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A unit of the file and its exact factor to SI.
 *
 * <p>A decimal of the file becomes the nearest SI double, and a double becomes the shortest decimal
 * that gives that same double again. So a value that is read, kept and written comes out with the
 * digits it came in with (up to 15 of them), and a value that is written and read again is the same
 * double.
 */
enum Quantity {
  MILLIMETRES("mm", "e-3"),
  DEGREES("deg", pi().divide(BigDecimal.valueOf(180), new MathContext(40))),
  GIGAPASCALS("GPa", "e9"),
  NEWTONS("N", "e0"),
  KILOGRAMS("kg", "e0"),
  DAYS("days", BigDecimal.valueOf(86_400)),
  PERCENT("%", "e-2"),
  FRACTION("", "e0");

  /** Digits every decimal keeps through a double (IEEE 754 binary64). */
  private static final int SAFE_DIGITS = 15;

  private static final int MOST_DIGITS = 20;

  private final String unit;
  private final BigDecimal factor;

  /** Exponent to put after the digits where the factor is a power of ten, else null. */
  private final String shift;

  Quantity(String unit, String shift) {
    this.unit = unit;
    this.factor = new BigDecimal("1" + shift);
    this.shift = shift;
  }

  Quantity(String unit, BigDecimal factor) {
    this.unit = unit;
    this.factor = factor;
    this.shift = null;
  }

  private static BigDecimal pi() {
    return new BigDecimal("3.1415926535897932384626433832795028841971693993751");
  }

  /** The unit as words after a number, with a space before it; empty for a fraction. */
  String suffix() {
    return unit.isEmpty() ? "" : " " + unit;
  }

  /** The unit as words after a thing to give, such as {@code in mm}; empty for a fraction. */
  String in() {
    return unit.isEmpty() ? "" : " in " + unit;
  }

  /**
   * The SI value of a JSON number.
   *
   * @return infinity for a number too large, 0 for one too small to be told from it
   */
  double toSi(String digits) {
    if (shift != null && digits.indexOf('e') < 0 && digits.indexOf('E') < 0) {
      return Double.parseDouble(digits + shift) + 0.0;
    }
    double rough = Double.parseDouble(digits);
    if (Double.isInfinite(rough) || rough == 0) {
      return rough + 0.0;
    }
    return toSi(new BigDecimal(digits));
  }

  private double toSi(BigDecimal decimal) {
    return decimal.multiply(factor).doubleValue();
  }

  /** The shortest decimal in this unit that stands for an SI value. */
  BigDecimal fromSi(double value) {
    BigDecimal exact = new BigDecimal(value).divide(factor, new MathContext(40));
    for (int digits = SAFE_DIGITS; digits < MOST_DIGITS; digits++) {
      BigDecimal shorter = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (toSi(shorter) == value) {
        return tidy(shorter);
      }
    }
    return tidy(exact.round(new MathContext(MOST_DIGITS)));
  }

  private static BigDecimal tidy(BigDecimal decimal) {
    BigDecimal bare = decimal.stripTrailingZeros();
    return bare.scale() < 0 && bare.precision() - bare.scale() <= SAFE_DIGITS
        ? bare.setScale(0)
        : bare;
  }
}
