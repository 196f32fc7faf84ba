// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.units.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as the table and the forms write them: no more digits than a tool reads. */
public final class Shown {
  private static final int MILLIMETRE_DIGITS = 1;
  private static final int OTHER_DIGITS = 3;

  private Shown() {}

  /** A length [m] in a unit, without its name. */
  public static String length(double metres, LengthUnit unit) {
    int digits = unit == LengthUnit.MILLIMETRE ? MILLIMETRE_DIGITS : OTHER_DIGITS;
    return number(unit.fromMetres(metres), digits);
  }

  /** A length [m] with its unit beside it. */
  public static String measure(double metres, LengthUnit unit) {
    return length(metres, unit) + " " + unit.symbol();
  }

  /** An angle [rad] in degrees, without the sign. */
  public static String degrees(double radians) {
    return number(Math.toDegrees(radians), 1);
  }

  /** An azimuth [rad] in degrees, from 0 to less than 360. */
  public static String azimuth(double radians) {
    String degrees = degrees(radians - 2 * Math.PI * Math.floor(radians / (2 * Math.PI)));
    return degrees.equals("360") ? "0" : degrees;
  }

  /** A fraction, to the thousandth. */
  public static String fraction(double value) {
    return number(value, 3);
  }

  private static String number(double value, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
