// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.sketch.entry.Polar;
import boughwright.viewer.window.sketch.entry.Shown;

/** Where a piece points, in words that need no drawing. */
public final class PointWords {
  private static final double LEVEL = Math.toRadians(0.05);

  private PointWords() {}

  /** Length, elevation and azimuth, such as {@code 82 mm, 35° up, toward 90° (your left)}. */
  public static String of(Polar polar, LengthUnit unit) {
    return Shown.measure(polar.length(), unit)
        + ", "
        + elevation(polar.elevation())
        + ", toward "
        + Shown.azimuth(polar.azimuth())
        + "\u00B0";
  }

  /** An elevation as an angle up or down. */
  public static String elevation(double elevation) {
    if (Math.abs(elevation) < LEVEL) {
      return "level";
    }
    return Shown.degrees(Math.abs(elevation)) + "\u00B0 " + (elevation > 0 ? "up" : "down");
  }

  /** The side of the tree that an azimuth points to, for one who stands at azimuth 0. */
  public static String side(double azimuth) {
    String[] sides = {
      "toward you",
      "toward you and left",
      "to your left",
      "away and left",
      "away from you",
      "away and right",
      "to your right",
      "toward you and right"
    };
    int eighth = (int) Math.floorMod(Math.round(azimuth / (Math.PI / 4)), 8L);
    return sides[eighth];
  }
}
