// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Position, frame, force and moment anywhere along an element, from values at its start, its Gauss
 * points and its end by cubic interpolation. Over a whole element the interpolation integrates as
 * the two Gauss points do, so moments agree with {@link Statics} at both ends.
 */
final class SectionPath {
  private static final double A = RodMesh.GAUSS_1;
  private static final double B = RodMesh.GAUSS_2;

  /** Denominators of the cubic Lagrange weights at 0, the Gauss points and 1. */
  private static final double AT_START = -A * B;

  private static final double AT_A = A * (A - B) * (A - 1);
  private static final double AT_B = B * (B - A) * (B - 1);
  private static final double AT_END = (1 - A) * (1 - B);

  private final RodState state;
  private final ForceSweep forces;
  private final double[] momentAtEnd;

  SectionPath(RodState state, ForceSweep forces, double[] momentAtEnd) {
    this.state = state;
    this.forces = forces;
    this.momentAtEnd = momentAtEnd;
  }

  /** Cubic Lagrange weights at a fraction of the length, shape (4). */
  private static double[] weights(double x) {
    double a = x - A;
    double b = x - B;
    double c = x - 1;
    return new double[] {
      a * b * c / AT_START, x * b * c / AT_A, x * a * c / AT_B, x * a * b / AT_END
    };
  }

  /** Integrals of the weights from 0 to a fraction of the length, shape (4). */
  private static double[] integrals(double x) {
    return new double[] {
      integral(A + B + 1, A * B + A + B, A * B, x) / AT_START,
      integral(B + 1, B, 0, x) / AT_A,
      integral(A + 1, A, 0, x) / AT_B,
      integral(A + B, A * B, 0, x) / AT_END
    };
  }

  /** Integral of x^3 - a x^2 + b x - c from 0. */
  private static double integral(double a, double b, double c, double x) {
    return x * (x * (x * (x / 4 - a / 3) + b / 2) - c);
  }

  /** The frame at a fraction of an element's length, shape (9), square to rounding. */
  double[] frame(int e, double x) {
    double[] w = weights(x);
    double[] f = new double[9];
    state.startFrame(e, f);
    double[] gauss = state.frame;
    int g = 18 * e;
    double[] node = state.nodeFrame;
    int n = 9 * e;
    for (int k = 0; k < 9; k++) {
      f[k] = w[0] * f[k] + w[1] * gauss[g + k] + w[2] * gauss[g + 9 + k] + w[3] * node[n + k];
    }
    square(f);
    return f;
  }

  /** Makes a frame square: its third axis keeps its direction, its first its plane with it. */
  private static void square(double[] f) {
    double t = 1 / Math.sqrt(f[2] * f[2] + f[5] * f[5] + f[8] * f[8]);
    double tx = t * f[2];
    double ty = t * f[5];
    double tz = t * f[8];
    double along = f[0] * tx + f[3] * ty + f[6] * tz;
    double ax = f[0] - along * tx;
    double ay = f[3] - along * ty;
    double az = f[6] - along * tz;
    double a = 1 / Math.sqrt(ax * ax + ay * ay + az * az);
    f[0] = a * ax;
    f[3] = a * ay;
    f[6] = a * az;
    f[1] = ty * f[6] - tz * f[3];
    f[4] = tz * f[0] - tx * f[6];
    f[7] = tx * f[3] - ty * f[0];
    f[2] = tx;
    f[5] = ty;
    f[8] = tz;
  }

  /** Position at a fraction of an element's length [m]. */
  double[] position(int e, double x) {
    double[] at = state.start(e);
    double[] first = new double[9];
    state.startFrame(e, first);
    double[] w = integrals(x);
    double h = state.mesh.h[e];
    for (int k = 0; k < 3; k++) {
      int row = 3 * k + 2;
      at[k] +=
          h
              * (w[0] * first[row]
                  + w[1] * state.frame[18 * e + row]
                  + w[2] * state.frame[18 * e + 9 + row]
                  + w[3] * state.nodeFrame[9 * e + row]);
    }
    return at;
  }

  /** Force through the section at a fraction of an element's length [N, space]. */
  double[] force(int e, double x) {
    double[] w = weights(x);
    double[] n = new double[3];
    for (int k = 0; k < 3; k++) {
      n[k] =
          w[0] * forces.atStart[3 * e + k]
              + w[1] * forces.through[6 * e + k]
              + w[2] * forces.through[6 * e + 3 + k]
              + w[3] * forces.atNode[3 * e + k];
    }
    return n;
  }

  /** Moment through the section at a fraction of an element's length [N m, space]. */
  double[] moment(int e, double x) {
    double[] m = Mat3.slice(momentAtEnd, 3 * e);
    double[] first = new double[9];
    state.startFrame(e, first);
    double[] w = integrals(x);
    double h = state.mesh.h[e];
    addTurn(m, -h * w[0], first, 0, forces.atStart, 3 * e);
    addTurn(m, h * (0.5 - w[1]), state.frame, 18 * e, forces.through, 6 * e);
    addTurn(m, h * (0.5 - w[2]), state.frame, 18 * e + 9, forces.through, 6 * e + 3);
    addTurn(m, -h * w[3], state.nodeFrame, 9 * e, forces.atNode, 3 * e);
    return m;
  }

  /** Adds a multiple of the third axis of a frame crossed with a force. */
  private static void addTurn(double[] m, double w, double[] frame, int f, double[] n, int k) {
    double tx = w * frame[f + 2];
    double ty = w * frame[f + 5];
    double tz = w * frame[f + 8];
    m[0] += ty * n[k + 2] - tz * n[k + 1];
    m[1] += tz * n[k] - tx * n[k + 2];
    m[2] += tx * n[k + 1] - ty * n[k];
  }
}
