// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.Arrays;

/**
 * The variations of one element with nodes at its start, middle and end; a workspace. Symmetric
 * blocks are kept as in {@link Sym3}, others row by row.
 */
final class ElementBlocks {
  /** First variation at start, middle and end [N m], shape (3, 3). */
  final double[] gradient = new double[9];

  final double[] startStart = new double[6];
  final double[] endEnd = new double[6];
  final double[] startEnd = new double[9];
  private final double[] middleMiddle = new double[6];
  private final double[] startMiddle = new double[9];
  private final double[] endMiddle = new double[9];
  private final double[] section = new double[6];
  private final double[] load = new double[6];

  void clear() {
    Arrays.fill(gradient, 0);
    Arrays.fill(startStart, 0);
    Arrays.fill(endEnd, 0);
    Arrays.fill(startEnd, 0);
    Arrays.fill(middleMiddle, 0);
    Arrays.fill(startMiddle, 0);
    Arrays.fill(endMiddle, 0);
  }

  /** Adds one Gauss point. */
  void add(
      int g,
      double h,
      SectionResponse r,
      double[] frame,
      int f,
      double[] through,
      int k,
      double stiffening) {
    double tx = frame[f + 2];
    double ty = frame[f + 5];
    double tz = frame[f + 8];
    double mx = frame[f] * r.m1 + frame[f + 1] * r.m2 + tx * r.m3;
    double my = frame[f + 3] * r.m1 + frame[f + 4] * r.m2 + ty * r.m3;
    double mz = frame[f + 6] * r.m1 + frame[f + 7] * r.m2 + tz * r.m3;
    double nx = through[k];
    double ny = through[k + 1];
    double nz = through[k + 2];
    turnSection(r, frame, f, 1 + stiffening);
    double along = nx * tx + ny * ty + nz * tz;
    load[0] = along - nx * tx;
    load[1] = -0.5 * (nx * ty + ny * tx);
    load[2] = -0.5 * (nx * tz + nz * tx);
    load[3] = along - ny * ty;
    load[4] = -0.5 * (ny * tz + nz * ty);
    load[5] = along - nz * tz;
    double[] n = Shape.N[g];
    double[] d = Shape.D[g];
    double w = h / 2;
    double perLength = 1 / h;
    double d0 = d[0] * perLength;
    double d1 = d[1] * perLength;
    double d2 = d[2] * perLength;
    addSymmetric(startStart, w * d0 * d0, w * n[0] * n[0]);
    addSymmetric(middleMiddle, w * d1 * d1, w * n[1] * n[1]);
    addSymmetric(endEnd, w * d2 * d2, w * n[2] * n[2]);
    double half = 0.5 * w;
    addFull(startMiddle, w * d0 * d1, w * n[0] * n[1], half * (d1 * n[0] - d0 * n[1]), mx, my, mz);
    addFull(startEnd, w * d0 * d2, w * n[0] * n[2], half * (d2 * n[0] - d0 * n[2]), mx, my, mz);
    addFull(endMiddle, w * d2 * d1, w * n[2] * n[1], half * (d1 * n[2] - d2 * n[1]), mx, my, mz);
    double cx = ty * nz - tz * ny;
    double cy = tz * nx - tx * nz;
    double cz = tx * ny - ty * nx;
    addGradient(0, w * d0, w * n[0], mx, my, mz, cx, cy, cz);
    addGradient(3, w * d1, w * n[1], mx, my, mz, cx, cy, cz);
    addGradient(6, w * d2, w * n[2], mx, my, mz, cx, cy, cz);
  }

  private void addGradient(
      int o, double d, double n, double mx, double my, double mz, double cx, double cy, double cz) {
    gradient[o] += d * mx - n * cx;
    gradient[o + 1] += d * my - n * cy;
    gradient[o + 2] += d * mz - n * cz;
  }

  /** The section tangent turned into space. */
  private void turnSection(SectionResponse r, double[] frame, int f, double factor) {
    double tx = frame[f + 2];
    double ty = frame[f + 5];
    double tz = frame[f + 8];
    if (r.isRound()) {
      double across = factor * r.k11;
      double more = factor * (r.k33 - r.k11);
      section[0] = across + more * tx * tx;
      section[1] = more * tx * ty;
      section[2] = more * tx * tz;
      section[3] = across + more * ty * ty;
      section[4] = more * ty * tz;
      section[5] = across + more * tz * tz;
      return;
    }
    int o = 0;
    for (int i = 0; i < 9; i += 3) {
      double a = frame[f + i];
      double b = frame[f + i + 1];
      double c = frame[f + i + 2];
      double x = factor * (r.k11 * a + r.k12 * b + r.k13 * c);
      double y = factor * (r.k12 * a + r.k22 * b + r.k23 * c);
      double z = factor * (r.k13 * a + r.k23 * b + r.k33 * c);
      for (int j = i; j < 9; j += 3) {
        section[o++] = x * frame[f + j] + y * frame[f + j + 1] + z * frame[f + j + 2];
      }
    }
  }

  private void addSymmetric(double[] out, double a, double b) {
    out[0] += a * section[0] + b * load[0];
    out[1] += a * section[1] + b * load[1];
    out[2] += a * section[2] + b * load[2];
    out[3] += a * section[3] + b * load[3];
    out[4] += a * section[4] + b * load[4];
    out[5] += a * section[5] + b * load[5];
  }

  private void addFull(
      double[] out, double a, double b, double c, double mx, double my, double mz) {
    double xy = a * section[1] + b * load[1];
    double xz = a * section[2] + b * load[2];
    double yz = a * section[4] + b * load[4];
    out[0] += a * section[0] + b * load[0];
    out[1] += xy - c * mz;
    out[2] += xz + c * my;
    out[3] += xy + c * mz;
    out[4] += a * section[3] + b * load[3];
    out[5] += yz - c * mx;
    out[6] += xz - c * my;
    out[7] += yz + c * mx;
    out[8] += a * section[5] + b * load[5];
  }

  /**
   * Eliminates the middle node.
   *
   * @param factors receives the inverse of the middle block (6) and its products with the blocks to
   *     the start (9) and to the end (9)
   * @return negative pivots
   */
  int eliminateMiddle(double[] factors, int at) {
    int negative = Sym3.invert(middleMiddle, 0, factors, at);
    for (int j = 0; j < 3; j++) {
      double[] s = startMiddle;
      double[] t = endMiddle;
      Sym3.apply(factors, at, s[3 * j], s[3 * j + 1], s[3 * j + 2], factors, at + 6 + j, 3);
      Sym3.apply(factors, at, t[3 * j], t[3 * j + 1], t[3 * j + 2], factors, at + 15 + j, 3);
    }
    reduceSymmetric(startStart, startMiddle, factors, at + 6);
    reduceSymmetric(endEnd, endMiddle, factors, at + 15);
    for (int i = 0; i < 9; i += 3) {
      double a = startMiddle[i];
      double b = startMiddle[i + 1];
      double c = startMiddle[i + 2];
      for (int j = 0; j < 3; j++) {
        int y = at + 15 + j;
        startEnd[i + j] -= a * factors[y] + b * factors[y + 3] + c * factors[y + 6];
      }
    }
    return negative;
  }

  private static void reduceSymmetric(double[] s, double[] c, double[] y, int yo) {
    s[0] -= c[0] * y[yo] + c[1] * y[yo + 3] + c[2] * y[yo + 6];
    s[1] -= c[0] * y[yo + 1] + c[1] * y[yo + 4] + c[2] * y[yo + 7];
    s[2] -= c[0] * y[yo + 2] + c[1] * y[yo + 5] + c[2] * y[yo + 8];
    s[3] -= c[3] * y[yo + 1] + c[4] * y[yo + 4] + c[5] * y[yo + 7];
    s[4] -= c[3] * y[yo + 2] + c[4] * y[yo + 5] + c[5] * y[yo + 8];
    s[5] -= c[6] * y[yo + 2] + c[7] * y[yo + 5] + c[8] * y[yo + 8];
  }
}
