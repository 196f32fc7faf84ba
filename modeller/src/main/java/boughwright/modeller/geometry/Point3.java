// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.geometry;

/**
 * A point of the tree frame; finite.
 *
 * @param x to the right [m]
 * @param y away from the viewer at azimuth 0 [m]
 * @param z up [m]
 */
public record Point3(double x, double y, double z) {
  public static final Point3 ORIGIN = new Point3(0, 0, 0);

  public Point3 {
    Finite.require(x, "x");
    Finite.require(y, "y");
    Finite.require(z, "z");
  }

  public Point3 plus(Vector3 step) {
    return new Point3(x + step.x(), y + step.y(), z + step.z());
  }

  /** The vector from {@code other} to this point. */
  public Vector3 minus(Point3 other) {
    return new Vector3(x - other.x, y - other.y, z - other.z);
  }

  public double distance(Point3 other) {
    return minus(other).norm();
  }

  /** The point a fraction of the way toward {@code other}: 0 is here, 1 is there. */
  public Point3 toward(Point3 other, double fraction) {
    return plus(other.minus(this).times(fraction));
  }
}
