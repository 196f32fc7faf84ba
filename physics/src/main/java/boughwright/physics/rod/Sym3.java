// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/** Symmetric 3x3 matrices in flat arrays, kept as xx, xy, xz, yy, yz, zz. */
final class Sym3 {
  /** A determinant smaller than this part of its terms is taken as this part of them. */
  private static final double SMALLEST = 1e-14;

  private Sym3() {}

  /**
   * Inverts a matrix by its cofactors, which takes one division, and counts the changes of sign of
   * its leading minors (Jacobi's signature rule: Gantmacher, The Theory of Matrices, chapter 10,
   * from memory).
   *
   * @return how many of its eigenvalues are negative
   */
  static int invert(double[] m, int o, double[] out, int at) {
    double xx = m[o];
    double xy = m[o + 1];
    double xz = m[o + 2];
    double yy = m[o + 3];
    double yz = m[o + 4];
    double zz = m[o + 5];
    double cxx = yy * zz - yz * yz;
    double cxy = xz * yz - xy * zz;
    double cxz = xy * yz - xz * yy;
    double czz = xx * yy - xy * xy;
    double det = xx * cxx + xy * cxy + xz * cxz;
    double least =
        SMALLEST * (Math.abs(xx * cxx) + Math.abs(xy * cxy) + Math.abs(xz * cxz))
            + Double.MIN_NORMAL;
    double inverse = 1 / (Math.abs(det) >= least ? det : det < 0 ? -least : least);
    out[at] = cxx * inverse;
    out[at + 1] = cxy * inverse;
    out[at + 2] = cxz * inverse;
    out[at + 3] = (xx * zz - xz * xz) * inverse;
    out[at + 4] = (xy * xz - xx * yz) * inverse;
    out[at + 5] = czz * inverse;
    boolean first = xx < 0;
    boolean second = czz < 0;
    boolean third = inverse < 0;
    return (first ? 1 : 0) + (first ^ second ? 1 : 0) + (second ^ third ? 1 : 0);
  }

  /** out[o], out[o + step], out[o + 2 step] = m times (x, y, z). */
  static void apply(
      double[] m, int at, double x, double y, double z, double[] out, int o, int step) {
    double a = m[at] * x + m[at + 1] * y + m[at + 2] * z;
    double b = m[at + 1] * x + m[at + 3] * y + m[at + 4] * z;
    double c = m[at + 2] * x + m[at + 4] * y + m[at + 5] * z;
    out[o] = a;
    out[o + step] = b;
    out[o + 2 * step] = c;
  }

  /** out[o..] = m[at..] times the transpose of the full matrix c, row by row. */
  static void timesTransposed(double[] m, int at, double[] c, double[] out, int o) {
    double xx = m[at];
    double xy = m[at + 1];
    double xz = m[at + 2];
    double yy = m[at + 3];
    double yz = m[at + 4];
    double zz = m[at + 5];
    for (int j = 0; j < 3; j++) {
      double x = c[3 * j];
      double y = c[3 * j + 1];
      double z = c[3 * j + 2];
      out[o + j] = xx * x + xy * y + xz * z;
      out[o + j + 3] = xy * x + yy * y + yz * z;
      out[o + j + 6] = xz * x + yz * y + zz * z;
    }
  }

  /** s -= c y, where the product of the full matrices c and y[o..] is symmetric. */
  static void subtractReduced(double[] s, double[] c, double[] y, int o) {
    double y1 = y[o + 1];
    double y2 = y[o + 2];
    double y4 = y[o + 4];
    double y5 = y[o + 5];
    double y7 = y[o + 7];
    double y8 = y[o + 8];
    double a = c[0];
    double b = c[1];
    double d = c[2];
    s[0] -= a * y[o] + b * y[o + 3] + d * y[o + 6];
    s[1] -= a * y1 + b * y4 + d * y7;
    s[2] -= a * y2 + b * y5 + d * y8;
    a = c[3];
    b = c[4];
    d = c[5];
    s[3] -= a * y1 + b * y4 + d * y7;
    s[4] -= a * y2 + b * y5 + d * y8;
    s[5] -= c[6] * y2 + c[7] * y5 + c[8] * y8;
  }

  /** out -= c y for full matrices, y[o..]. */
  static void subtractProduct(double[] out, double[] c, double[] y, int o) {
    for (int j = 0; j < 3; j++) {
      double a = y[o + j];
      double b = y[o + j + 3];
      double d = y[o + j + 6];
      out[j] -= c[0] * a + c[1] * b + c[2] * d;
      out[j + 3] -= c[3] * a + c[4] * b + c[5] * d;
      out[j + 6] -= c[6] * a + c[7] * b + c[8] * d;
    }
  }
}
