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
  private final LineColumn[][] ofLine;
  private final LineColumn[] column;
  private final double[] diagonal;
  private final double[] unknown;

  /** What a unit force along each column moves along it [m/N], shape (columns). */
  private final double[] give;

  private final int[] alongOf;
  private final SmallSymmetric small;
  private int columns;
  private int negativeAcross;

  LineCoupling(RodMesh mesh, int lines) {
    this.mesh = mesh;
    int most = 3 * lines;
    ofLine = new LineColumn[lines][];
    column = new LineColumn[most];
    diagonal = new double[most];
    unknown = new double[most];
    give = new double[most];
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
      if (lines.pulls(i)) {
        addLine(state, lines, i, tangent);
      }
    }
    for (int c = 0; c < columns; c++) {
      for (int b = 0; b <= c; b++) {
        small.matrix()[c][b] = column[c].product(column[b]);
      }
      give[c] = small.matrix()[c][c];
      small.matrix()[c][c] += diagonal[c];
    }
    if (!small.factorise(columns)) {
      return -1;
    }
    return tangent.negative() - small.negative() + negativeAcross;
  }

  private void addLine(RodState state, LineForces lines, int i, Tangent tangent) {
    LoadSet.MeshLine line = lines.lines.get(i);
    if (ofLine[i] == null) {
      LineReach reach = new LineReach(mesh, line);
      ofLine[i] = new LineColumn[3];
      Arrays.setAll(ofLine[i], k -> new LineColumn(mesh, line, reach));
    }
    double[] d = lines.direction[i];
    double stiffness = lines.tension[i] / lines.length[i];
    if (stiffness != 0) {
      double[] across = square(d);
      double[][] both = {across, Mat3.cross(d, across)};
      double size = Math.sqrt(Math.abs(stiffness));
      for (int k = 0; k < 2; k++) {
        double[] force = {size * both[k][0], size * both[k][1], size * both[k][2]};
        diagonal[columns] = Math.signum(stiffness);
        negativeAcross += stiffness < 0 ? 1 : 0;
        column[columns] = ofLine[i][k];
        column[columns++].form(state, lines.arm[2 * i], lines.arm[2 * i + 1], force, tangent);
      }
    }
    if (line.byLength()) {
      alongOf[i] = columns;
      diagonal[columns] = line.compliance();
      column[columns] = ofLine[i][2];
      column[columns++].form(state, lines.arm[2 * i], lines.arm[2 * i + 1], d, tangent);
    }
  }

  private static double[] square(double[] d) {
    double[] axis = new double[3];
    int least = Math.abs(d[0]) < Math.abs(d[1]) ? 0 : 1;
    axis[Math.abs(d[2]) < Math.abs(d[least]) ? 2 : least] = 1;
    double[] out = Mat3.cross(d, axis);
    double norm = Mat3.norm(out);
    return new double[] {out[0] / norm, out[1] / norm, out[2] / norm};
  }

  /**
   * Corrects a right side of the tree part, between the two halves of its solution, for the lines.
   *
   * @param atNode reduced right side at the nodes, written over
   * @param atMiddle reduced right side at the middles likewise
   * @param lines the lines
   * @param tensionStep receives the change of tension of each line [N]
   */
  void correct(double[] atNode, double[] atMiddle, LineForces lines, double[] tensionStep) {
    for (int c = 0; c < columns; c++) {
      unknown[c] = column[c].product(atNode, atMiddle);
    }
    for (int i = 0; i < alongOf.length; i++) {
      if (alongOf[i] >= 0) {
        unknown[alongOf[i]] -= lines.excess(i);
      }
    }
    small.solve(unknown);
    for (int c = 0; c < columns; c++) {
      column[c].subtract(unknown[c], atNode, atMiddle);
    }
    for (int i = 0; i < alongOf.length; i++) {
      tensionStep[i] = alongOf[i] >= 0 ? -unknown[alongOf[i]] : 0;
    }
  }

  /** How far the ends of a line of given length come together per tension [m/N]. */
  double givePerTension(int line) {
    return alongOf[line] < 0 ? 0 : give[alongOf[line]];
  }
}
