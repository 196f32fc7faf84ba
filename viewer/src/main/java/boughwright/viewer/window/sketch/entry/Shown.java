// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as the table and the canvas write them: no more digits than a tool reads. */
public final class Shown {
  private static final double FULL_TURN = 2 * Math.PI;

  private Shown() {}

  /** A length [m] in a unit, without its name. */
  public static String length(double metres, LengthUnit unit) {
    return units(unit).lengthNumber(metres);
  }

  /** A length [m] with its unit beside it. */
  public static String measure(double metres, LengthUnit unit) {
    return units(unit).length(metres);
  }

  private static DisplayUnits units(LengthUnit unit) {
    return new DisplayUnits(unit, ForceUnit.NEWTON);
  }

  /** An angle [rad] in degrees to the tenth, without the sign. */
  public static String degrees(double radians) {
    return plain(Math.toDegrees(radians), 1);
  }

  /** An azimuth [rad] in degrees, from 0 to less than 360. */
  public static String azimuth(double radians) {
    String degrees = degrees(radians - FULL_TURN * Math.floor(radians / FULL_TURN));
    return degrees.equals("360") ? "0" : degrees;
  }

  /** A fraction, to the thousandth. */
  public static String fraction(double value) {
    return plain(value, 3);
  }

  private static String plain(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
