// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.geometry;

/**
 * A direction of the tree frame: a vector of length one.
 *
 * @param x component to the right [1]
 * @param y component away from the viewer at azimuth 0 [1]
 * @param z component up [1]
 */
public record Direction3(double x, double y, double z) {
  public static final Direction3 UP = new Direction3(0, 0, 1);

  private static final double ROUNDING = 1e-9;

  public Direction3 {
    double norm = Math.sqrt(x * x + y * y + z * z);
    if (!(Math.abs(norm - 1) <= ROUNDING)) {
      throw new IllegalArgumentException("a direction has length 1, not " + norm);
    }
  }

  /**
   * The direction of a vector given by its components.
   *
   * @throws IllegalArgumentException if the vector has no length or is not finite
   */
  public static Direction3 of(double x, double y, double z) {
    double norm = Math.sqrt(x * x + y * y + z * z);
    if (!(norm > 0) || Double.isInfinite(norm)) {
      throw new IllegalArgumentException(
          "no direction in (" + x + ", " + y + ", " + z + "): its length is " + norm);
    }
    return new Direction3(x / norm, y / norm, z / norm);
  }

  /** The level direction of an azimuth [rad], as defined in the package description. */
  public static Direction3 ofAzimuth(double azimuth) {
    return new Direction3(-Math.sin(azimuth), -Math.cos(azimuth), 0);
  }

  /** The direction of an azimuth [rad] raised by an elevation above level [rad]. */
  public static Direction3 ofAzimuth(double azimuth, double elevation) {
    double level = Math.cos(elevation);
    return of(-Math.sin(azimuth) * level, -Math.cos(azimuth) * level, Math.sin(elevation));
  }

  public Vector3 times(double length) {
    return new Vector3(length * x, length * y, length * z);
  }

  public Vector3 vector() {
    return new Vector3(x, y, z);
  }

  public double dot(Direction3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  public Direction3 opposite() {
    return new Direction3(-x, -y, -z);
  }

  /** The angle between two directions, 0 to pi [rad]; accurate at both ends of that range. */
  public double angleTo(Direction3 other) {
    return Math.atan2(vector().cross(other.vector()).norm(), dot(other));
  }

  /** Some direction square to this one; the same one every time. */
  public Direction3 anySquare() {
    double ax = Math.abs(x);
    double ay = Math.abs(y);
    double az = Math.abs(z);
    if (ax <= ay && ax <= az) {
      return of(0, z, -y);
    }
    return ay <= az ? of(-z, 0, x) : of(y, -x, 0);
  }
}
