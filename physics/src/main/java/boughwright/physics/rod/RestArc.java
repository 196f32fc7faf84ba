// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/** The circular helix that a rod of constant curvature is at rest. */
final class RestArc {
  private RestArc() {}

  /**
   * Moves a frame along the arc.
   *
   * @param frame frame at the start, written over with the frame at the end
   * @param u curvature [rad/m, section frame]
   * @param length how far [m]
   * @return from the start to the end [m, space]
   */
  static double[] end(double[] frame, double[] u, double length) {
    double rate = Mat3.norm(u);
    double angle = rate * length;
    double[] t = {0, 0, 1};
    double[] chord = {0, 0, length};
    if (angle > 1e-9) {
      double[] axis = {u[0] / rate, u[1] / rate, u[2] / rate};
      double[] side = Mat3.cross(axis, t);
      double[] inward = Mat3.cross(axis, side);
      double a = (1 - Math.cos(angle)) / rate;
      double b = length - Math.sin(angle) / rate;
      for (int k = 0; k < 3; k++) {
        chord[k] += a * side[k] + b * inward[k];
      }
    }
    double[] moved = Mat3.apply(frame, 0, chord);
    double[] step = Mat3.exp(u[0] * length, u[1] * length, u[2] * length);
    double[] out = new double[9];
    Mat3.multiply(frame, 0, step, 0, out, 0);
    System.arraycopy(out, 0, frame, 0, 9);
    return moved;
  }
}
