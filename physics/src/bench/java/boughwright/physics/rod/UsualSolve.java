// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * What the program's own solve of a case comes to.
 *
 * @param elements elements it chose
 * @param error error of the tip as a fraction of the length
 * @param estimate its own estimate of that
 */
public record UsualSolve(int elements, double error, double estimate) {
  /** Solves a case. */
  public UsualSolve(BendCase bend) {
    this(bend, RodSolver.solve(bend.model(), bend.loads(), RodOptions.DEFAULT));
  }

  private UsualSolve(BendCase bend, RodSolution solution) {
    this(
        solution.elements(),
        bend.error(solution.pose().section(0, bend.length()).position()),
        solution.error().position() / bend.length());
  }
}
