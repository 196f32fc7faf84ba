// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * The variations of one element in the turns at its start, in its middle (the bubble of {@link
 * Shape}) and at its end; a workspace. Symmetric blocks are kept as in {@link Sym3}, others row by
 * row.
 *
 * <p>The shape functions make many products equal, so the two Gauss points are summed before the
 * blocks are formed.
 */
final class ElementBlocks {
  private static final double NEAR = 1 - RodMesh.GAUSS_1;
  private static final double FAR = RodMesh.GAUSS_1;
  private static final double BUBBLE = 4 * NEAR * FAR;
  private static final double SLOPE = 4 - 8 * RodMesh.GAUSS_1;

  /** First variation at start, middle and end [N m], shape (3, 3). */
  final double[] gradient = new double[9];

  final double[] startStart = new double[6];
  final double[] endEnd = new double[6];
  final double[] startEnd = new double[9];
  private final double[] middleMiddle = new double[6];
  private final double[] startMiddle = new double[9];
  private final double[] endMiddle = new double[9];
  private final Point first = new Point();
  private final Point second = new Point();

  /** What one Gauss point contributes. */
  private static final class Point {
    final double[] section = new double[6];
    final double[] load = new double[6];
    double mx;
    double my;
    double mz;
    double cx;
    double cy;
    double cz;

    void set(SectionResponse r, double[] frame, int f, double[] through, int k) {
      double tx = frame[f + 2];
      double ty = frame[f + 5];
      double tz = frame[f + 8];
      mx = frame[f] * r.m1 + frame[f + 1] * r.m2 + tx * r.m3;
      my = frame[f + 3] * r.m1 + frame[f + 4] * r.m2 + ty * r.m3;
      mz = frame[f + 6] * r.m1 + frame[f + 7] * r.m2 + tz * r.m3;
      double nx = through[k];
      double ny = through[k + 1];
      double nz = through[k + 2];
      cx = ty * nz - tz * ny;
      cy = tz * nx - tx * nz;
      cz = tx * ny - ty * nx;
      double along = nx * tx + ny * ty + nz * tz;
      load[0] = along - nx * tx;
      load[1] = -0.5 * (nx * ty + ny * tx);
      load[2] = -0.5 * (nx * tz + nz * tx);
      load[3] = along - ny * ty;
      load[4] = -0.5 * (ny * tz + nz * ty);
      load[5] = along - nz * tz;
      if (r.isRound()) {
        setRound(r.k11, r.k33 - r.k11, tx, ty, tz);
      } else {
        setAny(r, frame, f);
      }
    }

    private void setRound(double across, double more, double tx, double ty, double tz) {
      section[0] = across + more * tx * tx;
      section[1] = more * tx * ty;
      section[2] = more * tx * tz;
      section[3] = across + more * ty * ty;
      section[4] = more * ty * tz;
      section[5] = across + more * tz * tz;
    }

    private void setAny(SectionResponse r, double[] frame, int f) {
      int o = 0;
      for (int i = 0; i < 9; i += 3) {
        double a = frame[f + i];
        double b = frame[f + i + 1];
        double c = frame[f + i + 2];
        double x = r.k11 * a + r.k12 * b + r.k13 * c;
        double y = r.k12 * a + r.k22 * b + r.k23 * c;
        double z = r.k13 * a + r.k23 * b + r.k33 * c;
        for (int j = i; j < 9; j += 3) {
          section[o++] = x * frame[f + j] + y * frame[f + j + 1] + z * frame[f + j + 2];
        }
      }
    }
  }

  /** Takes in one of the two Gauss points, numbered 0 and 1. */
  void set(int g, SectionResponse r, double[] frame, int f, double[] through, int k) {
    (g == 0 ? first : second).set(r, frame, f, through, k);
  }

  /**
   * Forms the blocks from the two Gauss points.
   *
   * @param h length of the element [m]
   * @param stiffening part of the section tangent added to it [1]
   */
  void form(double h, double stiffening) {
    double stiff = (1 + stiffening) / (2 * h);
    double w = h / 2;
    for (int k = 0; k < 6; k++) {
      double sum = stiff * (first.section[k] + second.section[k]);
      double loads = w * (first.load[k] + second.load[k]);
      double tilt = w * (NEAR - FAR) * (first.load[k] - second.load[k]) / 2;
      double square = (NEAR * NEAR + FAR * FAR) / 2;
      startStart[k] = sum + square * loads + tilt;
      endEnd[k] = sum + square * loads - tilt;
      middleMiddle[k] = SLOPE * SLOPE * sum + BUBBLE * BUBBLE * loads;
    }
    fill(startEnd, -stiff, -stiff, w * NEAR * FAR, w * NEAR * FAR);
    fill(startMiddle, -SLOPE * stiff, SLOPE * stiff, w * BUBBLE * NEAR, w * BUBBLE * FAR);
    fill(endMiddle, SLOPE * stiff, -SLOPE * stiff, w * BUBBLE * FAR, w * BUBBLE * NEAR);
    turn(startEnd, 0.25, 0.25);
    turn(startMiddle, 0.25 * (SLOPE * NEAR + BUBBLE), 0.25 * (BUBBLE - SLOPE * FAR));
    turn(endMiddle, 0.25 * (SLOPE * FAR - BUBBLE), -0.25 * (SLOPE * NEAR + BUBBLE));
    formGradient(w);
  }

  /** Symmetric part: weights on the section tangents and on the load terms of both points. */
  private void fill(double[] out, double a1, double a2, double b1, double b2) {
    double[] s = first.section;
    double[] t = second.section;
    double[] p = first.load;
    double[] q = second.load;
    double xy = a1 * s[1] + a2 * t[1] + b1 * p[1] + b2 * q[1];
    double xz = a1 * s[2] + a2 * t[2] + b1 * p[2] + b2 * q[2];
    double yz = a1 * s[4] + a2 * t[4] + b1 * p[4] + b2 * q[4];
    out[0] = a1 * s[0] + a2 * t[0] + b1 * p[0] + b2 * q[0];
    out[1] = xy;
    out[2] = xz;
    out[3] = xy;
    out[4] = a1 * s[3] + a2 * t[3] + b1 * p[3] + b2 * q[3];
    out[5] = yz;
    out[6] = xz;
    out[7] = yz;
    out[8] = a1 * s[5] + a2 * t[5] + b1 * p[5] + b2 * q[5];
  }

  /** Skew part: weights on the moments of both points. */
  private void turn(double[] out, double c1, double c2) {
    double x = c1 * first.mx + c2 * second.mx;
    double y = c1 * first.my + c2 * second.my;
    double z = c1 * first.mz + c2 * second.mz;
    out[1] -= z;
    out[2] += y;
    out[3] += z;
    out[5] -= x;
    out[6] -= y;
    out[7] += x;
  }

  private void formGradient(double w) {
    Point a = first;
    Point b = second;
    gradient(0, 0.5 * (a.mx + b.mx), SLOPE / 2 * (a.mx - b.mx), w * a.cx, w * b.cx);
    gradient(1, 0.5 * (a.my + b.my), SLOPE / 2 * (a.my - b.my), w * a.cy, w * b.cy);
    gradient(2, 0.5 * (a.mz + b.mz), SLOPE / 2 * (a.mz - b.mz), w * a.cz, w * b.cz);
  }

  private void gradient(int k, double even, double odd, double c1, double c2) {
    gradient[k] = -even - NEAR * c1 - FAR * c2;
    gradient[3 + k] = odd - BUBBLE * (c1 + c2);
    gradient[6 + k] = even - FAR * c1 - NEAR * c2;
  }

  /**
   * Eliminates the middle.
   *
   * @param factors receives the inverse of the middle block (6) and its products with the blocks to
   *     the start (9) and to the end (9)
   * @return negative pivots
   */
  int eliminateMiddle(double[] factors, int at) {
    int negative = Sym3.invert(middleMiddle, 0, factors, at);
    double[] s = startMiddle;
    double[] t = endMiddle;
    for (int j = 0; j < 3; j++) {
      Sym3.apply(factors, at, s[3 * j], s[3 * j + 1], s[3 * j + 2], factors, at + 6 + j, 3);
      Sym3.apply(factors, at, t[3 * j], t[3 * j + 1], t[3 * j + 2], factors, at + 15 + j, 3);
    }
    Sym3.subtractReduced(startStart, s, factors, at + 6);
    Sym3.subtractReduced(endEnd, t, factors, at + 15);
    for (int i = 0; i < 9; i += 3) {
      double a = s[i];
      double b = s[i + 1];
      double c = s[i + 2];
      for (int j = 0; j < 3; j++) {
        int y = at + 15 + j;
        startEnd[i + j] -= a * factors[y] + b * factors[y + 3] + c * factors[y + 6];
      }
    }
    return negative;
  }
}
