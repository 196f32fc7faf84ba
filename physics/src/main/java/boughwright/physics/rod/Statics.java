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
}
