// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import java.util.List;

/** One solve on a mesh of given fineness, straight down in energy from the unbent state. */
public final class DirectSolve {
  /**
   * How finely a case is solved.
   *
   * @param elements elements along the rod; more where its taper asks for them
   * @param negligible turns that the iteration may leave out [rad]
   */
  public record Fineness(int elements, double negligible) {
    /** As fine as the program iterates, on a mesh of given size. */
    public static Fineness usual(int elements) {
      return new Fineness(elements, Newton.NEGLIGIBLE);
    }
  }

  private final RodModel model;
  private final RodLoads loads;
  private final Fineness fineness;
  private final MeshSolver solver;
  private final RodState state;
  private Newton.Report report;

  /**
   * Lays the mesh.
   *
   * @param bend the case
   * @param fineness how fine
   */
  public DirectSolve(BendCase bend, Fineness fineness) {
    model = bend.model();
    loads = bend.loads();
    this.fineness = fineness;
    solver = lay();
    state = new RodState(solver.mesh);
  }

  private MeshSolver lay() {
    List<RodLoads> stages = List.of(loads);
    MeshBuilder.Layout layout = new MeshBuilder(model, stages, fineness.elements()).build(1);
    return new MeshSolver(layout, stages, fineness.negligible());
  }

  /** The coarsest choice whose tip is as near as asked for [fraction of the length]. */
  public static Fineness finenessFor(BendCase bend, double error) {
    for (int elements = 1; ; elements++) {
      for (double negligible : new double[] {error, 0.1 * error, Newton.NEGLIGIBLE}) {
        Fineness fineness = new Fineness(elements, negligible);
        if (new DirectSolve(bend, fineness).error(bend) <= error) {
          return fineness;
        }
      }
    }
  }

  /** Error of the tip as a fraction of the length. */
  public double error(BendCase bend) {
    return bend.error(solve());
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
