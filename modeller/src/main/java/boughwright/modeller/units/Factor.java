// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The exact size of a unit, and decimal conversion with it.
 *
 * @param si size of the unit in its SI unit
 */
record Factor(BigDecimal si) {
  /** International inch: exactly 25.4 mm. */
  static final Factor INCH = of("0.0254");

  /** Avoirdupois pound: exactly 0.45359237 kg. */
  static final Factor POUND = of("0.45359237");

  /** Standard acceleration of free fall: exactly 9.80665 m/s2. */
  static final Factor GRAVITY = of("9.80665");

  /** One digit more than a double needs to be told from its neighbours. */
  private static final MathContext DIGITS = new MathContext(18);

  static Factor of(String si) {
    return new Factor(new BigDecimal(si));
  }

  Factor times(Factor other) {
    return new Factor(si.multiply(other.si));
  }

  double toSi(BigDecimal value) {
    return value.multiply(si).doubleValue();
  }

  double toSi(double value) {
    return toSi(BigDecimal.valueOf(value));
  }

  double fromSi(double value) {
    return BigDecimal.valueOf(value).divide(si, DIGITS).doubleValue();
  }
}
