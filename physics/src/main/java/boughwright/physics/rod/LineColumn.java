// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * What a force pair along one direction does at the two ends of a line, brought toward the base
 * through the factorised tangent; one column on top of the tree-shaped system. A workspace.
 *
 * <p>With the tangent as L D L^T, it holds L^-1 u and D^-1 L^-1 u of the column u, so that products
 * need no full solve.
 */
final class LineColumn {
  private static final double NEAR = RodMesh.GAUSS_2;
  private static final double FAR = RodMesh.GAUSS_1;
  private static final double BUBBLE = 4 * NEAR * FAR;

  private final RodMesh mesh;
  private final LoadSet.MeshLine line;
  private final LineReach reach;
  private final double[] node;
  private final double[] middle;
  private final double[] scaledNode;
  private final double[] scaledMiddle;

  LineColumn(RodMesh mesh, LoadSet.MeshLine line, LineReach reach) {
    this.mesh = mesh;
    this.line = line;
    this.reach = reach;
    node = new double[3 * mesh.count];
    middle = new double[3 * mesh.count];
    scaledNode = new double[3 * mesh.count];
    scaledMiddle = new double[3 * mesh.count];
  }

  /**
   * Forms the column of a force at end a and its opposite at end b.
   *
   * @param state the state
   * @param armA from the node to end a [space]
   * @param armB from the node to end b
   * @param force the force
   * @param tangent the factorised tangent
   */
  void form(RodState state, double[] armA, double[] armB, double[] force, Tangent tangent) {
    for (int e : reach.element) {
      node[3 * e] = 0;
      node[3 * e + 1] = 0;
      node[3 * e + 2] = 0;
    }
    addCross(line.a().node(), armA, force, 1);
    addCross(line.b().node(), armB, force, -1);
    for (int k = 0; k < reach.element.length; k++) {
      int e = reach.element[k];
      push(state, e, reach.side[k], force);
      tangent.reduce(e, node, middle);
      tangent.scale(e, node, scaledNode);
      tangent.scaleMiddle(e, middle, scaledMiddle);
    }
  }

  /** Sets what the force does to the turn in the middle and adds what it does at both ends. */
  private void push(RodState state, int e, int side, double[] force) {
    double w = side * mesh.h[e] / 2;
    double fx = w * force[0];
    double fy = w * force[1];
    double fz = w * force[2];
    double[] t = state.frame;
    int f = 18 * e + 2;
    double x1 = t[f + 3] * fz - t[f + 6] * fy;
    double y1 = t[f + 6] * fx - t[f] * fz;
    double z1 = t[f] * fy - t[f + 3] * fx;
    double x2 = t[f + 12] * fz - t[f + 15] * fy;
    double y2 = t[f + 15] * fx - t[f + 9] * fz;
    double z2 = t[f + 9] * fy - t[f + 12] * fx;
    int i = 3 * e;
    middle[i] = BUBBLE * (x1 + x2);
    middle[i + 1] = BUBBLE * (y1 + y2);
    middle[i + 2] = BUBBLE * (z1 + z2);
    node[i] += FAR * x1 + NEAR * x2;
    node[i + 1] += FAR * y1 + NEAR * y2;
    node[i + 2] += FAR * z1 + NEAR * z2;
    int p = 3 * mesh.parent[e];
    if (p >= 0) {
      node[p] += NEAR * x1 + FAR * x2;
      node[p + 1] += NEAR * y1 + FAR * y2;
      node[p + 2] += NEAR * z1 + FAR * z2;
      if (mesh.offset[e] != null) {
        addCross(mesh.parent[e], state.link(e), force, side);
      }
    }
  }

  private void addCross(int at, double[] arm, double[] force, int side) {
    if (at >= 0) {
      node[3 * at] += side * (arm[1] * force[2] - arm[2] * force[1]);
      node[3 * at + 1] += side * (arm[2] * force[0] - arm[0] * force[2]);
      node[3 * at + 2] += side * (arm[0] * force[1] - arm[1] * force[0]);
    }
  }

  /** This column times the inverse of the tree part times another. */
  double product(LineColumn other) {
    return product(other.node, other.middle);
  }

  /** This column times the inverse of the tree part times a reduced right side. */
  double product(double[] atNode, double[] atMiddle) {
    double sum = 0;
    for (int e : reach.element) {
      int i = 3 * e;
      sum +=
          scaledNode[i] * atNode[i]
              + scaledNode[i + 1] * atNode[i + 1]
              + scaledNode[i + 2] * atNode[i + 2]
              + scaledMiddle[i] * atMiddle[i]
              + scaledMiddle[i + 1] * atMiddle[i + 1]
              + scaledMiddle[i + 2] * atMiddle[i + 2];
    }
    return sum;
  }

  /** Takes a multiple of this column out of a reduced right side. */
  void subtract(double factor, double[] atNode, double[] atMiddle) {
    for (int e : reach.element) {
      for (int i = 3 * e; i < 3 * e + 3; i++) {
        atNode[i] -= factor * node[i];
        atMiddle[i] -= factor * middle[i];
      }
    }
  }
}
