// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** SI values as a person reads them, each with its unit. */
final class Shown {
  private static final MathContext SIX_DIGITS = new MathContext(6);

  private Shown() {}

  static String newtons(double force) {
    return fixed(force, 1) + " N";
  }

  /** A force as the mass a spring balance shows. */
  static String kilograms(double mass) {
    return fixed(mass, 2) + " kg";
  }

  static String millimetres(double length) {
    return fixed(1000 * length, 1) + " mm";
  }

  static String percent(double fraction) {
    return fixed(100 * fraction, 2) + " %";
  }

  static String newtonMetres(double moment) {
    return fixed(moment, 2) + " Nm";
  }

  static String gigapascals(double stress) {
    return fixed(stress / 1e9, 2) + " GPa";
  }

  static String megapascals(double stress) {
    return fixed(stress / 1e6, 1) + " MPa";
  }

  /** An error, which is never shown as nothing. */
  static String atMost(double value, int decimals, String unit) {
    double least = Math.pow(10, -decimals);
    return value < least
        ? "less than " + fixed(least, decimals) + unit
        : "about " + fixed(value, decimals) + unit;
  }

  /** A number with up to six digits and no more decimals than it needs. */
  static String plain(double value) {
    if (!Double.isFinite(value)) {
      return String.valueOf(value);
    }
    BigDecimal bare = new BigDecimal(value).round(SIX_DIGITS).stripTrailingZeros();
    return bare.scale() > 12 || bare.precision() - bare.scale() > 12
        ? bare.toString()
        : bare.toPlainString();
  }

  static String fixed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.startsWith("-") && text.chars().noneMatch(c -> c >= '1' && c <= '9')
        ? text.substring(1)
        : text;
  }
}
