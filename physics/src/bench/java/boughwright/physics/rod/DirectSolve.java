// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import java.util.List;

/** One solve on a mesh of given fineness, straight down in energy from the unbent state. */
public final class DirectSolve {
  private final RodModel model;
  private final RodLoads loads;
  private final int perPiece;
  private final MeshSolver solver;
  private final RodState state;
  private Newton.Report report;

  /**
   * Lays the mesh.
   *
   * @param bend the case
   * @param perPiece elements per piece of the coarsest mesh
   */
  public DirectSolve(BendCase bend, int perPiece) {
    model = bend.model();
    loads = bend.loads();
    this.perPiece = perPiece;
    solver = lay();
    state = new RodState(solver.mesh);
  }

  private MeshSolver lay() {
    return new MeshSolver(new MeshBuilder(model, List.of(loads)).build(perPiece), List.of(loads));
  }

  /** The coarsest fineness whose tip is as near as asked for [fraction of the length]. */
  public static int perPieceFor(BendCase bend, double error) {
    int perPiece = 1;
    while (bend.error(new DirectSolve(bend, perPiece).solveAll()) > error) {
      perPiece++;
    }
    return perPiece;
  }

  public int elements() {
    return solver.mesh.count;
  }

  public int iterations() {
    return report.iterations();
  }

  /** Solves on the mesh that was laid. */
  public Point3 solve() {
    return solve(solver, state);
  }

  /** Lays the mesh and the loads anew and solves. */
  public Point3 solveAll() {
    MeshSolver fresh = lay();
    return solve(fresh, new RodState(fresh.mesh));
  }

  private Point3 solve(MeshSolver on, RodState from) {
    LoadSet last = on.stages.get(0);
    from.copyFrom(on.rest);
    LineForces lines = new LineForces(last.lines, new double[last.lines.size()]);
    report = on.newton.minimise(from, lines, last);
    if (!report.converged()) {
      throw new IllegalStateException(report.reason());
    }
    return tip(from);
  }

  /** The end of the rod; what lies beyond the last load is straight. */
  private Point3 tip(RodState found) {
    int e = found.mesh.count - 1;
    double beyond = model.spans().get(0).length() - found.mesh.from[e] - found.mesh.h[e];
    double[] f = found.nodeFrame;
    double[] at = found.node;
    return new Point3(
        at[3 * e] + beyond * f[9 * e + 2],
        at[3 * e + 1] + beyond * f[9 * e + 5],
        at[3 * e + 2] + beyond * f[9 * e + 8]);
  }
}
