// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;

/** 3x3 matrices and vectors inside flat arrays, for the solver's inner loops. */
final class Mat3 {
  private Mat3() {}

  static double[] identity() {
    return new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1};
  }

  static double[] of(Rotation q) {
    Vector3 a = q.turn(new Vector3(1, 0, 0));
    Vector3 b = q.turn(new Vector3(0, 1, 0));
    Vector3 c = q.turn(new Vector3(0, 0, 1));
    return new double[] {a.x(), b.x(), c.x(), a.y(), b.y(), c.y(), a.z(), b.z(), c.z()};
  }

  /** out[o..] = a[ao..] * b[bo..]; the places must not overlap. */
  static void multiply(double[] a, int ao, double[] b, int bo, double[] out, int o) {
    for (int i = 0; i < 9; i += 3) {
      double x = a[ao + i];
      double y = a[ao + i + 1];
      double z = a[ao + i + 2];
      out[o + i] = x * b[bo] + y * b[bo + 3] + z * b[bo + 6];
      out[o + i + 1] = x * b[bo + 1] + y * b[bo + 4] + z * b[bo + 7];
      out[o + i + 2] = x * b[bo + 2] + y * b[bo + 5] + z * b[bo + 8];
    }
  }

  /** out[o..] = a[ao..] * v[vo..]; the places must not overlap. */
  static void apply(double[] a, int ao, double[] v, int vo, double[] out, int o) {
    double x = v[vo];
    double y = v[vo + 1];
    double z = v[vo + 2];
    out[o] = a[ao] * x + a[ao + 1] * y + a[ao + 2] * z;
    out[o + 1] = a[ao + 3] * x + a[ao + 4] * y + a[ao + 5] * z;
    out[o + 2] = a[ao + 6] * x + a[ao + 7] * y + a[ao + 8] * z;
  }

  /** a[ao..] times a vector. */
  static double[] apply(double[] a, int ao, double[] v) {
    double[] out = new double[3];
    apply(a, ao, v, 0, out, 0);
    return out;
  }

  /** The transpose of a[ao..] times a vector. */
  static double[] applyTransposed(double[] a, int ao, double[] v) {
    return new double[] {
      a[ao] * v[0] + a[ao + 3] * v[1] + a[ao + 6] * v[2],
      a[ao + 1] * v[0] + a[ao + 4] * v[1] + a[ao + 7] * v[2],
      a[ao + 2] * v[0] + a[ao + 5] * v[1] + a[ao + 8] * v[2]
    };
  }

  static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  static double[] slice(double[] a, int offset) {
    return new double[] {a[offset], a[offset + 1], a[offset + 2]};
  }

  static double norm(double[] v) {
    return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  }

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** The rotation matrix whose axis and angle are the direction and length of a vector. */
  static double[] exp(double x, double y, double z) {
    double squared = x * x + y * y + z * z;
    double angle = Math.sqrt(squared);
    double a = angle < 1e-4 ? 1 - squared / 6 : Math.sin(angle) / angle;
    double b = angle < 1e-4 ? 0.5 - squared / 24 : (1 - Math.cos(angle)) / squared;
    return new double[] {
      1 - b * (y * y + z * z),
      b * x * y - a * z,
      b * x * z + a * y,
      b * x * y + a * z,
      1 - b * (x * x + z * z),
      b * y * z - a * x,
      b * x * z - a * y,
      b * y * z + a * x,
      1 - b * (x * x + y * y)
    };
  }
}
