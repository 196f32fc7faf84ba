// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Moments from equilibrium alone: force times lever, summed from the tips. They converge one to two
 * orders faster than moments from the curvature of an element.
 */
final class Statics {
  private Statics() {}

  /**
   * Moments through the ends of the elements.
   *
   * @param state a state
   * @param forces the forces through it
   * @param nodes what acts at its nodes
   * @param atEnd receives the moment through the end of each element [N m, space], shape (count, 3)
   * @param atStart receives the moment through its start likewise
   */
  static void run(
      RodState state, ForceSweep forces, NodeTerms nodes, double[] atEnd, double[] atStart) {
    RodMesh mesh = state.mesh;
    for (int k = 0; k < atEnd.length; k++) {
      atEnd[k] = -nodes.gradient[k];
    }
    for (int e = mesh.count - 1; e >= 0; e--) {
      double w = mesh.h[e] / 2;
      double[] sum = Mat3.slice(atEnd, 3 * e);
      for (int g = 0; g < 2; g++) {
        int f = 18 * e + 9 * g;
        double[] t = {state.frame[f + 2], state.frame[f + 5], state.frame[f + 8]};
        double[] turn = Mat3.cross(t, Mat3.slice(forces.through, 6 * e + 3 * g));
        for (int k = 0; k < 3; k++) {
          sum[k] += w * turn[k];
        }
      }
      System.arraycopy(sum, 0, atStart, 3 * e, 3);
      if (mesh.parent[e] >= 0) {
        for (int k = 0; k < 3; k++) {
          atEnd[3 * mesh.parent[e] + k] += sum[k];
        }
      }
    }
  }

  /**
   * The moments at the Gauss points of an element that balance its load exactly as the elements see
   * it: tested with their shape functions of the middle and of the end.
   *
   * @param atEnd moments through the ends of the elements, from {@link #run}
   * @return moment at each Gauss point [N m, space], shape (2)(3)
   */
  static double[][] atGaussPoints(RodState state, ForceSweep forces, double[] atEnd, int e) {
    double h = state.mesh.h[e];
    double[][] out = new double[2][3];
    double[][] turn = new double[2][];
    for (int g = 0; g < 2; g++) {
      int f = 18 * e + 9 * g;
      double[] t = {state.frame[f + 2], state.frame[f + 5], state.frame[f + 8]};
      turn[g] = Mat3.cross(t, Mat3.slice(forces.through, 6 * e + 3 * g));
    }
    for (int k = 0; k < 3; k++) {
      double middle = h / 2 * (Shape.N[0][1] * turn[0][k] + Shape.N[1][1] * turn[1][k]);
      double end = h / 2 * (Shape.N[0][2] * turn[0][k] + Shape.N[1][2] * turn[1][k]);
      // slopes of the middle shape function are opposite, those of the end's sum to 2
      double fall = 2 * middle / Shape.D[0][1];
      out[1][k] = atEnd[3 * e + k] + end - Shape.D[0][2] * fall / 2;
      out[0][k] = out[1][k] + fall;
    }
    return out;
  }
}
