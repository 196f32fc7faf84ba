// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * Inertia of a body per unit of density: a symmetric tensor, so that {@code xy} is less than 0
 * where most of the body has x and y of the same sign.
 *
 * @param xx about the x axis [m5]
 * @param yy about the y axis [m5]
 * @param zz about the z axis [m5]
 * @param xy off the diagonal [m5]
 * @param xz off the diagonal [m5]
 * @param yz off the diagonal [m5]
 */
public record Inertia(double xx, double yy, double zz, double xy, double xz, double yz) {
  static final Inertia ZERO = new Inertia(0, 0, 0, 0, 0, 0);

  public Inertia {
    if (!(xx >= 0 && yy >= 0 && zz >= 0) || !Double.isFinite(xx + yy + zz + xy + xz + yz)) {
      throw new IllegalArgumentException("inertia is " + xx + ", " + yy + ", " + zz);
    }
  }

  /** Of a body that is round about an axis: one value about the axis, one square to it [m5]. */
  static Inertia round(Direction3 axis, double about, double square) {
    double more = about - square;
    return new Inertia(
        square + more * axis.x() * axis.x(),
        square + more * axis.y() * axis.y(),
        square + more * axis.z() * axis.z(),
        more * axis.x() * axis.y(),
        more * axis.x() * axis.z(),
        more * axis.y() * axis.z());
  }

  /** Of a volume [m3] at a point that lies a step [m] from where the inertia is taken about. */
  static Inertia point(double volume, Vector3 step) {
    double x = step.x();
    double y = step.y();
    double z = step.z();
    return new Inertia(
        volume * (y * y + z * z),
        volume * (x * x + z * z),
        volume * (x * x + y * y),
        -volume * x * y,
        -volume * x * z,
        -volume * y * z);
  }

  Inertia plus(Inertia other) {
    return new Inertia(
        xx + other.xx, yy + other.yy, zz + other.zz, xy + other.xy, xz + other.xz, yz + other.yz);
  }

  /** Inertia about an axis through the same point [m5]. */
  public double about(Direction3 axis) {
    double square = xx * axis.x() * axis.x() + yy * axis.y() * axis.y() + zz * axis.z() * axis.z();
    double mixed = xy * axis.x() * axis.y() + xz * axis.x() * axis.z() + yz * axis.y() * axis.z();
    return square + 2 * mixed;
  }
}
