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

  /** Weights of the moments in what couples an end of the element with its middle. */
  private static final double TURN_FAR = 0.25 * (SLOPE * NEAR + BUBBLE);

  private static final double TURN_NEAR = 0.25 * (BUBBLE - SLOPE * FAR);

  /** First variation at start, middle and end [N m], shape (3, 3). */
  final double[] gradient = new double[9];

  final double[] startStart = new double[6];
  final double[] endEnd = new double[6];
  final double[] startEnd = new double[9];
  private final double[] middleMiddle = new double[6];
  private final double[] startMiddle = new double[9];
  private final double[] endMiddle = new double[9];
  private final double[] evenStartEnd = new double[6];
  private final double[] evenStartMiddle = new double[6];
  private final double[] evenEndMiddle = new double[6];
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
      symmetric(k, stiff, w);
    }
    fill(evenStartEnd, 0.25, 0.25, startEnd);
    fill(evenStartMiddle, TURN_FAR, TURN_NEAR, startMiddle);
    fill(evenEndMiddle, -TURN_NEAR, -TURN_FAR, endMiddle);
    formGradient(w);
  }

  /** One entry of the symmetric part of every block. */
  private void symmetric(int k, double stiff, double w) {
    double s = first.section[k];
    double t = second.section[k];
    double p = first.load[k];
    double q = second.load[k];
    double sum = stiff * (s + t);
    double change = SLOPE * stiff * (s - t);
    double loads = w * (p + q);
    double tilt = w * (NEAR - FAR) / 2 * (p - q);
    double both = sum + (NEAR * NEAR + FAR * FAR) / 2 * loads;
    double half = BUBBLE / 2 * loads;
    double lean = BUBBLE * tilt - change;
    startStart[k] = both + tilt;
    endEnd[k] = both - tilt;
    middleMiddle[k] = SLOPE * SLOPE * sum + BUBBLE * BUBBLE * loads;
    evenStartEnd[k] = NEAR * FAR * loads - sum;
    evenStartMiddle[k] = half + lean;
    evenEndMiddle[k] = half - lean;
  }

  /** A full block: its symmetric part and, from weights on the moments, its skew part. */
  private void fill(double[] symmetric, double c1, double c2, double[] out) {
    double x = c1 * first.mx + c2 * second.mx;
    double y = c1 * first.my + c2 * second.my;
    double z = c1 * first.mz + c2 * second.mz;
    out[0] = symmetric[0];
    out[1] = symmetric[1] - z;
    out[2] = symmetric[2] + y;
    out[3] = symmetric[1] + z;
    out[4] = symmetric[3];
    out[5] = symmetric[4] - x;
    out[6] = symmetric[2] - y;
    out[7] = symmetric[4] + x;
    out[8] = symmetric[5];
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
    Sym3.timesTransposed(factors, at, startMiddle, factors, at + 6);
    Sym3.timesTransposed(factors, at, endMiddle, factors, at + 15);
    Sym3.subtractReduced(startStart, startMiddle, factors, at + 6);
    Sym3.subtractReduced(endEnd, endMiddle, factors, at + 15);
    Sym3.subtractProduct(startEnd, startMiddle, factors, at + 15);
    return negative;
  }
}
