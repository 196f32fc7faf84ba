// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.look.Measure;

/** Numbers as the table and the canvas write them: no more digits than a tool reads. */
public final class Shown {
  private static final double FULL_TURN = 2 * Math.PI;
  private static final Measure FRACTION = Measure.number("");

  private Shown() {}

  /** A length [m] in a unit, without its name. */
  public static String length(double metres, LengthUnit unit) {
    return Measure.LENGTH.show(metres, units(unit));
  }

  /** A length [m] with its unit beside it. */
  public static String measure(double metres, LengthUnit unit) {
    return Measure.LENGTH.words(metres, units(unit));
  }

  private static DisplayUnits units(LengthUnit unit) {
    return new DisplayUnits(unit, ForceUnit.NEWTON);
  }

  /** An angle [rad] in degrees, without the sign. */
  public static String degrees(double radians) {
    return Measure.ANGLE.show(radians, DisplayUnits.USUAL);
  }

  /** An azimuth [rad] in degrees, from 0 to less than 360. */
  public static String azimuth(double radians) {
    String degrees = degrees(radians - FULL_TURN * Math.floor(radians / FULL_TURN));
    return degrees.equals("360") ? "0" : degrees;
  }

  /** A fraction, to the thousandth. */
  public static String fraction(double value) {
    return FRACTION.show(value, DisplayUnits.USUAL);
  }
}
