// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * The second variation of the energy of a tree of rods, factorised from the tips to the base, and
 * its first variation; a workspace.
 *
 * <p>With a field of turns psi (space), curvature changes by R^T (psi' - psi x psi' / 2) and the
 * tangent t by psi x t + psi x (psi x t) / 2, to second order. With section moment m, section
 * tangent A (space) and passing force n the variations are
 *
 * <pre>
 *   first:  integral of  m . psi' - psi . (t x n)
 *   second: integral of  psi' . A psi' - m . (psi x psi') + (n . t) psi . psi - (psi . n)(psi . t)
 * </pre>
 *
 * (Simo and Vu-Quoc 1986, https://doi.org/10.1016/0045-7825(86)90079-4, without shear and stretch;
 * derived again in docs/theory/rods.md.) The middle of each element is eliminated in the element,
 * the end node on the way to the base, so cost is linear in elements; the number of negative pivots
 * is the number of negative eigenvalues (Sylvester's law of inertia).
 */
final class Tangent {
  private static final int PER_ELEMENT = 39;
  private static final int MIDDLE_INVERSE = 0;
  private static final int TO_START = 6;
  private static final int TO_END = 15;
  private static final int NODE_INVERSE = 24;
  private static final int TO_PARENT = 30;

  private final RodMesh mesh;
  private final double[] factors;
  private final double[] nodeBlock;
  private final SectionResponse response = new SectionResponse();
  private final ElementBlocks blocks = new ElementBlocks();

  /** First variation at the nodes [N m], shape (count, 3). */
  final double[] nodeGradient;

  /** First variation at the element middles [N m], shape (count, 3). */
  final double[] middleGradient;

  private int negative;

  Tangent(RodMesh mesh) {
    this.mesh = mesh;
    factors = new double[PER_ELEMENT * mesh.count];
    nodeBlock = new double[6 * mesh.count];
    nodeGradient = new double[3 * mesh.count];
    middleGradient = new double[3 * mesh.count];
  }

  /** Negative pivots of the last factorisation. */
  int negative() {
    return negative;
  }

  /**
   * Forms both variations in a state and factorises the second.
   *
   * @param state the state
   * @param forces the forces through it
   * @param nodes what acts at the nodes
   * @param stiffening part of the section tangent added to it, 0 for the true second variation
   */
  void form(RodState state, ForceSweep forces, NodeTerms nodes, double stiffening) {
    negative = 0;
    System.arraycopy(nodes.block, 0, nodeBlock, 0, nodeBlock.length);
    System.arraycopy(nodes.gradient, 0, nodeGradient, 0, nodeGradient.length);
    for (int e = mesh.count - 1; e >= 0; e--) {
      for (int g = 0; g < 2; g++) {
        int k = 6 * e + 3 * g;
        mesh.law[2 * e + g].respond(
            state.curvature[k] - mesh.rest[k],
            state.curvature[k + 1] - mesh.rest[k + 1],
            state.curvature[k + 2] - mesh.rest[k + 2],
            response);
        blocks.set(g, response, state.frame, 18 * e + 9 * g, forces.through, k);
      }
      blocks.form(mesh.h[e], stiffening);
      gather(e);
      negative += blocks.eliminateMiddle(factors, PER_ELEMENT * e);
      eliminateNode(e);
    }
  }

  private void gather(int e) {
    double[] g = blocks.gradient;
    int p = 3 * mesh.parent[e];
    for (int k = 0; k < 3; k++) {
      if (p >= 0) {
        nodeGradient[p + k] += g[k];
      }
      middleGradient[3 * e + k] = g[3 + k];
      nodeGradient[3 * e + k] += g[6 + k];
    }
  }

  private void eliminateNode(int e) {
    double[] own = blocks.endEnd;
    int b = 6 * e;
    for (int k = 0; k < 6; k++) {
      own[k] += nodeBlock[b + k];
    }
    int f = PER_ELEMENT * e;
    negative += Sym3.invert(own, 0, factors, f + NODE_INVERSE);
    Sym3.timesTransposed(factors, f + NODE_INVERSE, blocks.startEnd, factors, f + TO_PARENT);
    int p = mesh.parent[e];
    if (p >= 0) {
      Sym3.subtractReduced(blocks.startStart, blocks.startEnd, factors, f + TO_PARENT);
      for (int k = 0; k < 6; k++) {
        nodeBlock[6 * p + k] += blocks.startStart[k];
      }
    }
  }

  /**
   * Brings a right side from the tips to the base: the first half of a solution.
   *
   * @param atNode right side at the nodes, written over, shape (count, 3)
   * @param atMiddle right side at the middles, not changed, shape (count, 3)
   */
  void reduce(double[] atNode, double[] atMiddle) {
    for (int e = mesh.count - 1; e >= 0; e--) {
      reduce(e, atNode, atMiddle);
    }
  }

  /** Takes one element out of a right side; everything beyond it must be out. */
  void reduce(int e, double[] atNode, double[] atMiddle) {
    int f = PER_ELEMENT * e;
    int i = 3 * e;
    double mx = atMiddle[i];
    double my = atMiddle[i + 1];
    double mz = atMiddle[i + 2];
    subtractTransposed(f + TO_END, mx, my, mz, atNode, i);
    int p = 3 * mesh.parent[e];
    if (p >= 0) {
      subtractTransposed(f + TO_START, mx, my, mz, atNode, p);
      subtractTransposed(f + TO_PARENT, atNode[i], atNode[i + 1], atNode[i + 2], atNode, p);
    }
  }

  /** Divides what a reduced right side has at the node of an element by its pivot. */
  void scale(int e, double[] atNode, double[] out) {
    int i = 3 * e;
    int f = PER_ELEMENT * e + NODE_INVERSE;
    Sym3.apply(factors, f, atNode[i], atNode[i + 1], atNode[i + 2], out, i, 1);
  }

  /** Divides what a right side has in the middle of an element by its pivot. */
  void scaleMiddle(int e, double[] atMiddle, double[] out) {
    int i = 3 * e;
    int f = PER_ELEMENT * e + MIDDLE_INVERSE;
    Sym3.apply(factors, f, atMiddle[i], atMiddle[i + 1], atMiddle[i + 2], out, i, 1);
  }

  /**
   * Goes from the base to the tips: the second half of a solution.
   *
   * @param atNode reduced right side at the nodes, written over with the turns there
   * @param atMiddle right side at the middles, written over likewise
   */
  void finish(double[] atNode, double[] atMiddle) {
    for (int e = 0; e < mesh.count; e++) {
      int f = PER_ELEMENT * e;
      int i = 3 * e;
      int p = 3 * mesh.parent[e];
      scale(e, atNode, atNode);
      scaleMiddle(e, atMiddle, atMiddle);
      if (p >= 0) {
        subtract(f + TO_PARENT, atNode, p, atNode, i);
        subtract(f + TO_START, atNode, p, atMiddle, i);
      }
      subtract(f + TO_END, atNode, i, atMiddle, i);
    }
  }

  private void subtract(int m, double[] v, int vo, double[] out, int o) {
    double[] a = factors;
    double x = v[vo];
    double y = v[vo + 1];
    double z = v[vo + 2];
    out[o] -= a[m] * x + a[m + 1] * y + a[m + 2] * z;
    out[o + 1] -= a[m + 3] * x + a[m + 4] * y + a[m + 5] * z;
    out[o + 2] -= a[m + 6] * x + a[m + 7] * y + a[m + 8] * z;
  }

  private void subtractTransposed(int m, double x, double y, double z, double[] out, int o) {
    double[] a = factors;
    out[o] -= a[m] * x + a[m + 3] * y + a[m + 6] * z;
    out[o + 1] -= a[m + 1] * x + a[m + 4] * y + a[m + 7] * z;
    out[o + 2] -= a[m + 2] * x + a[m + 5] * y + a[m + 8] * z;
  }

  /** Sets both right sides to the first variation with its sign turned. */
  void descent(double[] atNode, double[] atMiddle) {
    for (int k = 0; k < nodeGradient.length; k++) {
      atNode[k] = -nodeGradient[k];
      atMiddle[k] = -middleGradient[k];
    }
  }
}
