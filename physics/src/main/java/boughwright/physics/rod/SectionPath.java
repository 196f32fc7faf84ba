// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Position, frame, force and moment anywhere along an element, from values at its start, its Gauss
 * points and its end by cubic interpolation.
 */
final class SectionPath {
  private static final double[] KNOTS = {0, RodMesh.GAUSS_1, RodMesh.GAUSS_2, 1};
  private static final double[] GAUSS_3 = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
  private static final double[] WEIGHT_3 = {5.0 / 18, 8.0 / 18, 5.0 / 18};

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
    double[] w = new double[4];
    for (int i = 0; i < 4; i++) {
      w[i] = 1;
      for (int j = 0; j < 4; j++) {
        w[i] *= i == j ? 1 : (x - KNOTS[j]) / (KNOTS[i] - KNOTS[j]);
      }
    }
    return w;
  }

  /** The frame at a fraction of an element's length, shape (9), square to rounding. */
  double[] frame(int e, double x) {
    double[] w = weights(x);
    double[] start = new double[9];
    state.startFrame(e, start);
    double[] f = new double[9];
    for (int k = 0; k < 9; k++) {
      f[k] =
          w[0] * start[k]
              + w[1] * state.frame[18 * e + k]
              + w[2] * state.frame[18 * e + 9 + k]
              + w[3] * state.nodeFrame[9 * e + k];
    }
    double[] t = unit(new double[] {f[2], f[5], f[8]});
    double[] a = {f[0], f[3], f[6]};
    double along = Mat3.dot(a, t);
    double[] first =
        unit(new double[] {a[0] - along * t[0], a[1] - along * t[1], a[2] - along * t[2]});
    double[] second = Mat3.cross(t, first);
    return new double[] {
      first[0], second[0], t[0], first[1], second[1], t[1], first[2], second[2], t[2]
    };
  }

  private static double[] unit(double[] v) {
    double norm = Mat3.norm(v);
    return new double[] {v[0] / norm, v[1] / norm, v[2] / norm};
  }

  private double[] tangent(int e, double x) {
    double[] w = weights(x);
    double[] start = new double[9];
    state.startFrame(e, start);
    double[] t = new double[3];
    for (int k = 0; k < 3; k++) {
      int row = 3 * k + 2;
      t[k] =
          w[0] * start[row]
              + w[1] * state.frame[18 * e + row]
              + w[2] * state.frame[18 * e + 9 + row]
              + w[3] * state.nodeFrame[9 * e + row];
    }
    return t;
  }

  /** Position at a fraction of an element's length [m]. */
  double[] position(int e, double x) {
    double[] at = state.start(e);
    for (int q = 0; q < 3; q++) {
      double[] t = tangent(e, x * GAUSS_3[q]);
      for (int k = 0; k < 3; k++) {
        at[k] += WEIGHT_3[q] * x * state.mesh.h[e] * t[k];
      }
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
    double rest = 1 - x;
    for (int q = 0; q < 3; q++) {
      double at = x + rest * GAUSS_3[q];
      double[] turn = Mat3.cross(tangent(e, at), force(e, at));
      for (int k = 0; k < 3; k++) {
        m[k] += WEIGHT_3[q] * rest * state.mesh.h[e] * turn[k];
      }
    }
    return m;
  }
}
