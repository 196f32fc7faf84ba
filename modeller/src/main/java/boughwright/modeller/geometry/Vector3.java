// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.geometry;

/**
 * A difference of two points, a force or a moment; finite.
 *
 * @param x component to the right
 * @param y component away from the viewer at azimuth 0
 * @param z component up
 */
public record Vector3(double x, double y, double z) {
  public static final Vector3 ZERO = new Vector3(0, 0, 0);

  public Vector3 {
    Finite.require(x, "x");
    Finite.require(y, "y");
    Finite.require(z, "z");
  }

  public Vector3 plus(Vector3 other) {
    return new Vector3(x + other.x, y + other.y, z + other.z);
  }

  public Vector3 minus(Vector3 other) {
    return new Vector3(x - other.x, y - other.y, z - other.z);
  }

  public Vector3 times(double factor) {
    return new Vector3(factor * x, factor * y, factor * z);
  }

  public double dot(Vector3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  public Vector3 cross(Vector3 other) {
    return new Vector3(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  public double norm() {
    return Math.sqrt(dot(this));
  }

  /**
   * The direction of this vector.
   *
   * @throws IllegalArgumentException if it has no length
   */
  public Direction3 direction() {
    return Direction3.of(x, y, z);
  }
}
