// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/**
 * Where a piece points and how long it is, as a person measures it.
 *
 * @param azimuth clockwise seen from above, 0 toward the viewer [rad]
 * @param elevation above level, from -pi/2 to pi/2 [rad]
 * @param length length [m]
 */
public record Polar(double azimuth, double elevation, double length) {
  /** Steps in a metre that points are rounded to: a hundredth of what a tape reads. */
  private static final double STEPS = 1e6;

  /** Within this of plumb an azimuth means nothing; it counts as 0 [rad]. */
  private static final double PLUMB = 1e-6;

  public Polar {
    if (!Double.isFinite(azimuth + elevation) || !(length >= 0) || Double.isInfinite(length)) {
      throw new IllegalArgumentException("a piece points somewhere and has a length");
    }
  }

  /** Where a piece from one point to another points; the azimuth from 0 to 2 pi. */
  public static Polar between(Point3 from, Point3 to) {
    Vector3 step = to.minus(from);
    double level = Math.hypot(step.x(), step.y());
    double elevation = Math.atan2(step.z(), level);
    double azimuth =
        Math.PI / 2 - Math.abs(elevation) < PLUMB ? 0 : Math.atan2(-step.x(), -step.y());
    return new Polar(azimuth < 0 ? azimuth + 2 * Math.PI : azimuth, elevation, step.norm());
  }

  /** Where a piece from a point ends, to the micrometre. */
  public Point3 from(Point3 start) {
    Point3 end = start.plus(Direction3.ofAzimuth(azimuth, elevation).times(length));
    return rounded(end);
  }

  /** A point rounded to the micrometre, so that files stay legible. */
  public static Point3 rounded(Point3 point) {
    return new Point3(rounded(point.x()), rounded(point.y()), rounded(point.z()));
  }

  private static double rounded(double value) {
    return Math.round(value * STEPS) / STEPS + 0.0;
  }
}
