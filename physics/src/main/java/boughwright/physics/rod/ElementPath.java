// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Integrates frames along an element from its curvature, taken as linear along the element, by the
 * fourth-order Magnus formula.
 *
 * <p>Source: Iserles, Munthe-Kaas, Norsett and Zanna, Lie-group methods, Acta Numerica 9 (2000),
 * https://doi.org/10.1017/S0962492900002154, section 4 (from memory).
 */
final class ElementPath {
  private ElementPath() {}

  /**
   * Turns a frame along a stretch with a curvature that goes linearly.
   *
   * @param frame frame at the start, written over with the frame at the end
   * @param start curvature at the start [rad/m, section frame]
   * @param end curvature at the end [rad/m, section frame]
   * @param length length of the stretch [m]
   */
  static void advance(double[] frame, double[] start, double[] end, double length) {
    double[] mean = {
      0.5 * (start[0] + end[0]), 0.5 * (start[1] + end[1]), 0.5 * (start[2] + end[2])
    };
    double[] rise = Mat3.minus(end, start);
    double[] bend = Mat3.cross(mean, rise);
    double k = length * length / 12;
    double[] step =
        Mat3.exp(
            length * mean[0] + k * bend[0],
            length * mean[1] + k * bend[1],
            length * mean[2] + k * bend[2]);
    double[] out = new double[9];
    Mat3.multiply(frame, 0, step, 0, out, 0);
    System.arraycopy(out, 0, frame, 0, 9);
  }

  /**
   * Sets frames and curvatures of one element of a state from the curvature at its two ends.
   *
   * @param state written to, except for node positions
   * @param e element; everything before it must be set
   * @param start curvature at the start of the element [rad/m, section frame]
   * @param end curvature at its end [rad/m, section frame]
   */
  static void fill(RodState state, int e, double[] start, double[] end) {
    double h = state.mesh.h[e];
    double[] frame = new double[9];
    state.startFrame(e, frame);
    double[] last = start;
    double at = 0;
    for (int g = 0; g < 2; g++) {
      double next = g == 0 ? RodMesh.GAUSS_1 : RodMesh.GAUSS_2;
      double[] here = between(start, end, next);
      advance(frame, last, here, (next - at) * h);
      System.arraycopy(frame, 0, state.frame, 18 * e + 9 * g, 9);
      System.arraycopy(here, 0, state.curvature, 6 * e + 3 * g, 3);
      last = here;
      at = next;
    }
    advance(frame, last, end, (1 - at) * h);
    System.arraycopy(frame, 0, state.nodeFrame, 9 * e, 9);
  }

  /** The value a fraction of the way between two, beyond them too. */
  static double[] between(double[] a, double[] b, double x) {
    return new double[] {
      a[0] + x * (b[0] - a[0]), a[1] + x * (b[1] - a[1]), a[2] + x * (b[2] - a[2])
    };
  }

  /** The value at a fraction of an element's length of a line through its two Gauss values. */
  static double[] through(double[] gaussValues, int offset, double x) {
    double[] first = Mat3.slice(gaussValues, offset);
    double[] second = Mat3.slice(gaussValues, offset + 3);
    return between(first, second, (x - RodMesh.GAUSS_1) / (RodMesh.GAUSS_2 - RodMesh.GAUSS_1));
  }
}
