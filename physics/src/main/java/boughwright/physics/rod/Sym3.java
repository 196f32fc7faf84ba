// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/** Symmetric 3x3 matrices in flat arrays, kept as xx, xy, xz, yy, yz, zz. */
final class Sym3 {
  /** A pivot smaller than this part of its row is taken as this part of it. */
  private static final double SMALLEST_PIVOT = 1e-14;

  private Sym3() {}

  /**
   * Inverts a matrix by its L D L^T factors.
   *
   * @return how many of its eigenvalues are negative
   */
  static int invert(double[] m, int o, double[] out, int at) {
    double d1 = guarded(m[o], Math.abs(m[o]) + Math.abs(m[o + 1]) + Math.abs(m[o + 2]));
    double l21 = m[o + 1] / d1;
    double l31 = m[o + 2] / d1;
    double d2 = guarded(m[o + 3] - l21 * m[o + 1], Math.abs(m[o + 3]) + Math.abs(m[o + 4]));
    double l32 = (m[o + 4] - l31 * m[o + 1]) / d2;
    double d3 = guarded(m[o + 5] - l31 * m[o + 2] - l32 * l32 * d2, Math.abs(m[o + 5]));
    double p = l21 * l32 - l31;
    double i1 = 1 / d1;
    double i2 = 1 / d2;
    double i3 = 1 / d3;
    out[at] = i1 + l21 * l21 * i2 + p * p * i3;
    out[at + 1] = -l21 * i2 - l32 * p * i3;
    out[at + 2] = p * i3;
    out[at + 3] = i2 + l32 * l32 * i3;
    out[at + 4] = -l32 * i3;
    out[at + 5] = i3;
    return (d1 < 0 ? 1 : 0) + (d2 < 0 ? 1 : 0) + (d3 < 0 ? 1 : 0);
  }

  private static double guarded(double pivot, double scale) {
    double least = SMALLEST_PIVOT * scale + Double.MIN_NORMAL;
    return Math.abs(pivot) >= least ? pivot : pivot < 0 ? -least : least;
  }

  /** out[o], out[o + step], out[o + 2 step] = m times (x, y, z). */
  static void apply(
      double[] m, int at, double x, double y, double z, double[] out, int o, int step) {
    out[o] = m[at] * x + m[at + 1] * y + m[at + 2] * z;
    out[o + step] = m[at + 1] * x + m[at + 3] * y + m[at + 4] * z;
    out[o + 2 * step] = m[at + 2] * x + m[at + 4] * y + m[at + 5] * z;
  }

  /** s -= c y, where the product of the full matrices c and y is symmetric. */
  static void subtractReduced(double[] s, double[] c, double[] y, int o) {
    s[0] -= c[0] * y[o] + c[1] * y[o + 3] + c[2] * y[o + 6];
    s[1] -= c[0] * y[o + 1] + c[1] * y[o + 4] + c[2] * y[o + 7];
    s[2] -= c[0] * y[o + 2] + c[1] * y[o + 5] + c[2] * y[o + 8];
    s[3] -= c[3] * y[o + 1] + c[4] * y[o + 4] + c[5] * y[o + 7];
    s[4] -= c[3] * y[o + 2] + c[4] * y[o + 5] + c[5] * y[o + 8];
    s[5] -= c[6] * y[o + 2] + c[7] * y[o + 5] + c[8] * y[o + 8];
  }
}
