// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.Arrays;

/**
 * What lines add to the tangent: as their ends move, a line turns (two directions across it) and,
 * where its length is given, its tension answers (one direction along it). Each is one column on
 * top of the tree-shaped system, solved by the Woodbury identity; the inertia follows from
 * Haynsworth 1968, https://doi.org/10.1016/0024-3795(68)90050-5. A workspace.
 *
 * <p>With the tree part H, columns U, and the small diagonal D (1 across with columns scaled by the
 * root of tension over length; the compliance along), the system is [H U; U^T -D].
 */
final class LineCoupling {
  private final RodMesh mesh;
  private final double[][] rightNode;
  private final double[][] rightMiddle;
  private final double[][] answerNode;
  private final double[][] answerMiddle;
  private final double[] diagonal;
  private final double[] unknown;
  private final int[] alongOf;
  private final SmallSymmetric small;
  private int columns;
  private int negativeAcross;

  LineCoupling(RodMesh mesh, int lines) {
    this.mesh = mesh;
    int most = 3 * lines;
    rightNode = new double[most][3 * mesh.count];
    rightMiddle = new double[most][3 * mesh.count];
    answerNode = new double[most][3 * mesh.count];
    answerMiddle = new double[most][3 * mesh.count];
    diagonal = new double[most];
    unknown = new double[most];
    alongOf = new int[lines];
    small = new SmallSymmetric(most);
  }

  /**
   * Forms the columns of the lines that pull and factorises the small system.
   *
   * @return the number of unstable modes of the whole system, or -1 when it is singular
   */
  int form(RodState state, LineForces lines, Tangent tangent) {
    columns = 0;
    negativeAcross = 0;
    Arrays.fill(alongOf, -1);
    for (int i = 0; i < lines.lines.size(); i++) {
      if (!lines.pulls(i)) {
        continue;
      }
      double[] d = lines.direction[i];
      double[] across = square(d);
      double stiffness = lines.tension[i] / lines.length[i];
      if (stiffness != 0) {
        addColumn(state, lines, i, across, stiffness);
        addColumn(state, lines, i, Mat3.cross(d, across), stiffness);
      }
      if (lines.lines.get(i).byLength()) {
        alongOf[i] = columns;
        addColumn(state, lines, i, d, 1);
        diagonal[columns - 1] = lines.lines.get(i).compliance();
      }
    }
    for (int c = 0; c < columns; c++) {
      System.arraycopy(rightNode[c], 0, answerNode[c], 0, rightNode[c].length);
      System.arraycopy(rightMiddle[c], 0, answerMiddle[c], 0, rightMiddle[c].length);
      tangent.solve(answerNode[c], answerMiddle[c]);
      for (int b = 0; b <= c; b++) {
        small.matrix()[c][b] = product(b, answerNode[c], answerMiddle[c]);
      }
      small.matrix()[c][c] += diagonal[c];
    }
    if (!small.factorise(columns)) {
      return -1;
    }
    return tangent.negative() - small.negative() + negativeAcross;
  }

  private void addColumn(
      RodState state, LineForces lines, int i, double[] direction, double stiffness) {
    double size = Math.sqrt(Math.abs(stiffness));
    double[] force = {size * direction[0], size * direction[1], size * direction[2]};
    double[] back = {-force[0], -force[1], -force[2]};
    int c = columns++;
    Arrays.fill(rightNode[c], 0);
    Arrays.fill(rightMiddle[c], 0);
    push(state, lines.lines.get(i).a().node(), lines.arm[2 * i], force, c);
    push(state, lines.lines.get(i).b().node(), lines.arm[2 * i + 1], back, c);
    diagonal[c] = Math.signum(stiffness);
    negativeAcross += stiffness < 0 ? 1 : 0;
  }

  /** Adds what a force at a node with an arm does to every turn between the node and the clamp. */
  private void push(RodState state, int node, double[] arm, double[] force, int c) {
    if (node < 0) {
      return;
    }
    addCross(rightNode[c], node, arm, force);
    for (int e = node; e >= 0; e = mesh.parent[e]) {
      double w = mesh.h[e] / 2;
      int p = mesh.parent[e];
      for (int g = 0; g < 2; g++) {
        int f = 18 * e + 9 * g;
        double tx = state.frame[f + 2];
        double ty = state.frame[f + 5];
        double tz = state.frame[f + 8];
        double x = w * (ty * force[2] - tz * force[1]);
        double y = w * (tz * force[0] - tx * force[2]);
        double z = w * (tx * force[1] - ty * force[0]);
        double[] n = Shape.N[g];
        add(rightMiddle[c], e, n[1], x, y, z);
        add(rightNode[c], e, n[2], x, y, z);
        if (p >= 0) {
          add(rightNode[c], p, n[0], x, y, z);
        }
      }
      if (p >= 0 && mesh.offset[e] != null) {
        addCross(rightNode[c], p, state.link(e), force);
      }
    }
  }

  private static void addCross(double[] out, int node, double[] arm, double[] force) {
    double[] turn = Mat3.cross(arm, force);
    add(out, node, 1, turn[0], turn[1], turn[2]);
  }

  private static void add(double[] out, int node, double factor, double x, double y, double z) {
    out[3 * node] += factor * x;
    out[3 * node + 1] += factor * y;
    out[3 * node + 2] += factor * z;
  }

  private static double[] square(double[] d) {
    double[] axis = new double[3];
    int least = Math.abs(d[0]) < Math.abs(d[1]) ? 0 : 1;
    axis[Math.abs(d[2]) < Math.abs(d[least]) ? 2 : least] = 1;
    double[] out = Mat3.cross(d, axis);
    double norm = Mat3.norm(out);
    return new double[] {out[0] / norm, out[1] / norm, out[2] / norm};
  }

  private double product(int c, double[] atNode, double[] atMiddle) {
    double sum = 0;
    double[] n = rightNode[c];
    double[] m = rightMiddle[c];
    for (int k = 0; k < n.length; k++) {
      sum += n[k] * atNode[k] + m[k] * atMiddle[k];
    }
    return sum;
  }

  /**
   * Corrects the answer of the tree part for the lines.
   *
   * @param atNode turns at the nodes from the tree part alone, written over
   * @param atMiddle turns at the middles likewise
   * @param tensionStep receives the change of tension of each line [N]
   */
  void correct(double[] atNode, double[] atMiddle, LineForces lines, double[] tensionStep) {
    for (int c = 0; c < columns; c++) {
      unknown[c] = product(c, atNode, atMiddle);
    }
    for (int i = 0; i < alongOf.length; i++) {
      if (alongOf[i] >= 0) {
        unknown[alongOf[i]] -= lines.excess(i);
      }
    }
    small.solve(unknown);
    for (int c = 0; c < columns; c++) {
      double y = unknown[c];
      double[] n = answerNode[c];
      double[] m = answerMiddle[c];
      for (int k = 0; k < n.length; k++) {
        atNode[k] -= y * n[k];
        atMiddle[k] -= y * m[k];
      }
    }
    for (int i = 0; i < alongOf.length; i++) {
      tensionStep[i] = alongOf[i] >= 0 ? -unknown[alongOf[i]] : 0;
    }
  }
}
