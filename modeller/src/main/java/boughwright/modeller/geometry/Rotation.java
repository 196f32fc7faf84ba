// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.geometry;

import org.joml.Quaterniond;
import org.joml.Quaterniondc;
import org.joml.Vector3d;

/**
 * A rotation as a unit quaternion. It turns vectors (the frame stays): {@code about(z, pi/2)} turns
 * (1, 0, 0) into (0, 1, 0).
 *
 * @param x first part, the axis times the sine of half the angle [1]
 * @param y second part [1]
 * @param z third part [1]
 * @param w cosine of half the angle [1]
 */
public record Rotation(double x, double y, double z, double w) {
  public static final Rotation NONE = new Rotation(0, 0, 0, 1);

  private static final double ROUNDING = 1e-9;

  public Rotation {
    double norm = Math.sqrt(x * x + y * y + z * z + w * w);
    if (!(Math.abs(norm - 1) <= ROUNDING)) {
      throw new IllegalArgumentException("a rotation is a quaternion of length 1, not " + norm);
    }
  }

  /** The right-handed turn about an axis by an angle [rad]. */
  public static Rotation about(Direction3 axis, double angle) {
    return of(new Quaterniond().rotationAxis(angle, axis.x(), axis.y(), axis.z()));
  }

  /** The turn whose axis is the direction of a vector and whose angle is its length [rad]. */
  public static Rotation ofVector(Vector3 vector) {
    double angle = vector.norm();
    return angle == 0 ? NONE : about(vector.direction(), angle);
  }

  /** The shortest turn that brings one direction onto another. */
  public static Rotation between(Direction3 from, Direction3 to) {
    return of(new Quaterniond().rotationTo(vector(from), vector(to)));
  }

  /**
   * The turn that brings x, y, z onto three directions, which must be square to each other and
   * right-handed.
   */
  public static Rotation toAxes(Direction3 xAxis, Direction3 yAxis, Direction3 zAxis) {
    Vector3d cross = vector(xAxis).cross(vector(yAxis));
    if (!(cross.distance(vector(zAxis)) < 1e-6)) {
      throw new IllegalArgumentException("axes are not square to each other and right-handed");
    }
    return of(
        new Quaterniond()
            .setFromNormalized(new org.joml.Matrix3d(vector(xAxis), vector(yAxis), vector(zAxis))));
  }

  private static Rotation of(Quaterniondc q) {
    Quaterniond unit = new Quaterniond(q).normalize();
    return new Rotation(unit.x, unit.y, unit.z, unit.w);
  }

  private static Vector3d vector(Direction3 direction) {
    return new Vector3d(direction.x(), direction.y(), direction.z());
  }

  private Quaterniond quaternion() {
    return new Quaterniond(x, y, z, w);
  }

  public Vector3 turn(Vector3 vector) {
    Vector3d out = quaternion().transform(new Vector3d(vector.x(), vector.y(), vector.z()));
    return new Vector3(out.x, out.y, out.z);
  }

  public Direction3 turn(Direction3 direction) {
    return turn(direction.vector()).direction();
  }

  /** This turn after {@code first}: {@code a.after(b).turn(v) == a.turn(b.turn(v))}. */
  public Rotation after(Rotation first) {
    return of(quaternion().mul(first.quaternion()));
  }

  public Rotation inverse() {
    return new Rotation(-x, -y, -z, w);
  }
}
