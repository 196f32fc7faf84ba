// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Finds the pose of a tree of rods under load, on meshes of its own choice: it solves on a coarse
 * mesh, halves the elements until the answer no longer changes by more than is asked for, and
 * reports the change as its error.
 */
public final class RodSolver {
  private static final String OVERLOADED =
      "a section would have to carry more than it can in any bend";

  private RodSolver() {}

  /** The pose under loads brought on together. */
  public static RodSolution solve(RodModel model, RodLoads loads, RodOptions options) {
    return solve(model, List.of(loads), options);
  }

  /**
   * The pose under the last of several sets of loads, each brought on from the one before.
   *
   * @param model the rods
   * @param stages sets of loads whose lines have the same ends in the same order
   * @param options how to solve
   */
  public static RodSolution solve(RodModel model, List<RodLoads> stages, RodOptions options) {
    MeshBuilder builder = new MeshBuilder(model, stages);
    return solve(builder, layout -> new MeshSolver(layout, stages), options);
  }

  /**
   * The pose under loads brought on from a pose under others.
   *
   * @param model the rods
   * @param from the pose to go on from
   * @param loads the loads to come to
   * @param options how to solve
   */
  public static RodSolution solve(
      RodModel model, RodStart from, RodLoads loads, RodOptions options) {
    MeshBuilder builder = new MeshBuilder(model, List.of(from.loads(), loads));
    List<RodLoads> stages = List.of(loads);
    return solve(builder, layout -> new MeshSolver(layout, stages, from), options);
  }

  private static RodSolution solve(
      MeshBuilder builder, Function<MeshBuilder.Layout, MeshSolver> solvers, RodOptions options) {
    Level level = new Level(solvers.apply(builder.build(1)));
    level.follow(options);
    RodSolution.Error error = RodSolution.Error.UNKNOWN;
    int failures = level.holds() ? 0 : 1;
    for (int halving = 1;
        halving <= options.mostHalvings() && failures < options.doubt().meshes;
        halving++) {
      Level finer = new Level(solvers.apply(builder.build(1 << halving)));
      finer.refine(level, options);
      failures = finer.holds() ? 0 : failures + 1;
      boolean comparable = level.holds() && finer.holds();
      error =
          comparable
              ? MeshDifference.between(level.pose(), finer.pose(), level.lines, finer.lines)
              : RodSolution.Error.UNKNOWN;
      level = finer;
      if (isEnough(error, options, builder.longestPath())) {
        break;
      }
    }
    return level.solution(error);
  }

  private static boolean isEnough(RodSolution.Error error, RodOptions options, double length) {
    return error.position() <= options.positionError() * length
        && error.tension() <= options.tensionError()
        && error.strain() <= options.strainError();
  }

  /** One mesh and what was found on it. */
  private static final class Level {
    private final MeshSolver solver;
    private RodState state;
    private LineForces lines;
    private LoadSet loads;
    private RodStatus status;
    private int iterations;

    Level(MeshSolver solver) {
      this.solver = solver;
    }

    boolean holds() {
      return status.holds();
    }

    RodPose pose() {
      return new RodPose(solver, state, lines, loads);
    }

    void follow(RodOptions options) {
      boolean byLength = solver.initial.lines.stream().anyMatch(LoadSet.MeshLine::byLength);
      if (options.route() == RodOptions.Route.DIRECT && !byLength) {
        descend();
        return;
      }
      PathFollower follower = new PathFollower(solver, options.doubt().shortestStep);
      PathFollower.Arrival arrival = follower.run();
      iterations += arrival.iterations();
      state = follower.state;
      lines = follower.lines();
      loads = follower.loads();
      status = status(arrival);
    }

    private void descend() {
      LoadSet last = solver.stages.get(solver.stages.size() - 1);
      loads = last;
      state = new RodState(solver.mesh);
      state.copyFrom(solver.start);
      lines = new LineForces(last.lines, new double[last.lines.size()]);
      Newton.Report report = solver.newton.minimise(state, lines, last);
      iterations += report.iterations();
      status = status(arrival(report));
    }

    private PathFollower.Arrival arrival(Newton.Report report) {
      return new PathFollower.Arrival(
          report.converged(),
          solver.stages.size() - 1,
          report.converged() ? 1 : 0,
          report.iterations(),
          report.unstable(),
          report.worst(),
          report.reason());
    }

    /** Starts from the answer on a coarser mesh; follows the loads again if that does not hold. */
    void refine(Level coarse, RodOptions options) {
      iterations = coarse.iterations;
      if (!coarse.holds()) {
        follow(options);
        return;
      }
      LoadSet last = solver.stages.get(solver.stages.size() - 1);
      loads = last;
      state = solver.refined(coarse.state);
      lines = new LineForces(last.lines, coarse.lines.tension);
      Newton.Report report = solver.newton.correct(state, lines, last, 12, Newton.Reach.ANYWHERE);
      iterations += report.iterations();
      status = status(arrival(report));
      boolean near = report.firstStep() + report.laterSteps() < 0.3;
      if (!report.converged() || report.unstable() != 0 || !near) {
        follow(options);
      }
    }

    private RodStatus status(PathFollower.Arrival arrival) {
      RodMesh mesh = solver.mesh;
      int e = Math.min(arrival.worst(), mesh.count - 1);
      boolean some = e >= 0;
      boolean stable = arrival.arrived() && arrival.unstable() == 0;
      return new RodStatus(
          arrival.arrived(),
          stable,
          arrival.unstable(),
          arrival.stage(),
          arrival.part(),
          some ? mesh.span[e] : 0,
          some ? mesh.from[e] + mesh.h[e] : 0,
          arrival.reason(),
          iterations);
    }

    RodSolution solution(RodSolution.Error error) {
      List<RodSolution.LineState> found = new ArrayList<>();
      for (int i = 0; i < lines.lines.size(); i++) {
        found.add(line(i));
      }
      RodPose pose = pose();
      int overloaded = holds() ? pose.overloaded() : -1;
      if (overloaded >= 0) {
        double at = solver.mesh.from[overloaded];
        status = status.refused(solver.mesh.span[overloaded], at, OVERLOADED);
      }
      return new RodSolution(
          status, pose, found, holds() ? error : RodSolution.Error.UNKNOWN, solver.mesh.count);
    }

    private RodSolution.LineState line(int i) {
      lines.lay(state);
      double[] a = end(lines.lines.get(i).a(), lines.arm[2 * i]);
      double[] b = end(lines.lines.get(i).b(), lines.arm[2 * i + 1]);
      return new RodSolution.LineState(
          lines.tension[i],
          lines.length[i],
          lines.tension[i] == 0,
          new Point3(a[0], a[1], a[2]),
          new Point3(b[0], b[1], b[2]));
    }

    private double[] end(LoadSet.LineEnd end, double[] arm) {
      if (end.node() < 0) {
        return end.arm();
      }
      double[] at = Mat3.slice(state.node, 3 * end.node());
      return new double[] {at[0] + arm[0], at[1] + arm[1], at[2] + arm[2]};
    }
  }
}
