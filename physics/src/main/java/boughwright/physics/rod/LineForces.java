// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.List;

/**
 * Where the lines run in a state and how hard they pull; a workspace.
 *
 * <p>A line with a given tension keeps it; one with a given length has the tension as an unknown.
 */
final class LineForces {
  /** Lengths that agree to this part are the same. */
  private static final double ROUNDING = 1e-13;

  final List<LoadSet.MeshLine> lines;

  /** Tension of each line [N], shape (lines). */
  final double[] tension;

  /** Length of each line [m], shape (lines). */
  final double[] length;

  /** Direction from end a to end b, shape (lines)(3). */
  final double[][] direction;

  /** Lines of given length let go because they would have to push, shape (lines). */
  private final boolean[] released;

  /** Arms from node to end in space [m], shape (lines, ends a and b)(3). */
  final double[][] arm;

  LineForces(List<LoadSet.MeshLine> lines, double[] tension) {
    this.lines = lines;
    this.tension = tension.clone();
    length = new double[lines.size()];
    direction = new double[lines.size()][3];
    arm = new double[2 * lines.size()][3];
    released = new boolean[lines.size()];
    for (int i = 0; i < lines.size(); i++) {
      if (!lines.get(i).byLength()) {
        this.tension[i] = lines.get(i).value();
      }
    }
  }

  /** Lays the lines between the ends as they are in a state. */
  void lay(RodState state) {
    for (int i = 0; i < lines.size(); i++) {
      LoadSet.MeshLine line = lines.get(i);
      double[] a = point(state, line.a(), arm[2 * i]);
      double[] b = point(state, line.b(), arm[2 * i + 1]);
      double[] gap = Mat3.minus(b, a);
      length[i] = Mat3.norm(gap);
      for (int k = 0; k < 3; k++) {
        direction[i][k] = length[i] > 0 ? gap[k] / length[i] : 0;
      }
    }
  }

  private static double[] point(RodState state, LoadSet.LineEnd end, double[] arm) {
    if (end.node() < 0) {
      return end.arm();
    }
    Mat3.apply(state.nodeFrame, 9 * end.node(), end.arm(), 0, arm, 0);
    int at = 3 * end.node();
    return new double[] {
      state.node[at] + arm[0], state.node[at + 1] + arm[1], state.node[at + 2] + arm[2]
    };
  }

  /** The distance between the two ends of a line in a state [m]. */
  static double distance(RodState state, LoadSet.MeshLine line) {
    double[] a = point(state, line.a(), new double[3]);
    double[] b = point(state, line.b(), new double[3]);
    return Mat3.norm(Mat3.minus(b, a));
  }

  /** How much longer a line of given length is than it may be at its tension [m]. */
  double excess(int i) {
    LoadSet.MeshLine line = lines.get(i);
    return length[i] - line.value() - line.compliance() * tension[i];
  }

  /** Whether a line pulls: tight, or longer than its given length, and not let go. */
  boolean pulls(int i) {
    if (!lines.get(i).byLength()) {
      return tension[i] > 0;
    }
    return !released[i] && (tension[i] > 0 || length[i] >= lines.get(i).value() * (1 - ROUNDING));
  }

  /**
   * Lets the line go that a step would make push the most.
   *
   * @param step change of the tension of each line of given length [N]
   * @return whether there was one; the step is then void
   */
  boolean release(double[] step) {
    int worst = -1;
    double push = 0;
    for (int i = 0; i < step.length; i++) {
      if (lines.get(i).byLength() && tension[i] + step[i] < push) {
        push = tension[i] + step[i];
        worst = i;
      }
    }
    if (worst >= 0) {
      tension[worst] = 0;
      released[worst] = true;
    }
    return worst >= 0;
  }

  /** Takes hold again of lines that were let go and are too long as they lie now. */
  void takeUp() {
    for (int i = 0; i < released.length; i++) {
      released[i] &= length[i] <= lines.get(i).value() * (1 + ROUNDING);
    }
  }
}
