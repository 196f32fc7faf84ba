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
   * Moments at the Gauss points that balance the forces exactly on the mesh, so that the first
   * variation is zero.
   *
   * @return moments [N m, space], shape (count, 2, 3)
   */
  static double[] balancing(RodState state, ForceSweep forces, NodeTerms nodes) {
    RodMesh mesh = state.mesh;
    double[] out = new double[6 * mesh.count];
    double[] atNode = new double[3 * mesh.count];
    for (int k = 0; k < atNode.length; k++) {
      atNode[k] = -nodes.gradient[k];
    }
    double[][] n = Shape.N;
    double slope = Shape.D[0][1];
    for (int e = mesh.count - 1; e >= 0; e--) {
      double w = mesh.h[e] / 2;
      double[][] turn = new double[2][];
      for (int g = 0; g < 2; g++) {
        int f = 18 * e + 9 * g;
        double[] t = {state.frame[f + 2], state.frame[f + 5], state.frame[f + 8]};
        turn[g] = Mat3.cross(t, Mat3.slice(forces.through, 6 * e + 3 * g));
      }
      for (int k = 0; k < 3; k++) {
        double mean = atNode[3 * e + k] + w * (n[0][2] * turn[0][k] + n[1][2] * turn[1][k]);
        double half = w * n[0][1] * (turn[0][k] + turn[1][k]) / slope;
        out[6 * e + k] = mean + half;
        out[6 * e + 3 + k] = mean - half;
        if (mesh.parent[e] >= 0) {
          atNode[3 * mesh.parent[e] + k] +=
              mean + w * (n[0][0] * turn[0][k] + n[1][0] * turn[1][k]);
        }
      }
    }
    return out;
  }
}
