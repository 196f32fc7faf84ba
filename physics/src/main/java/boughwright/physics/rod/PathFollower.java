// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Brings the loads on step by step, so that the pose found is the one a hand would reach, and a
 * jump on the way is seen.
 *
 * <p>A step is taken when Newton's method settles near where its first step pointed and the state
 * is stable; else it is made shorter. Steps that shrink to nothing mean that no continuous stable
 * way goes on from there.
 */
final class PathFollower {
  /** Largest first step [rad]; longer steps are cut before any more work is spent on them. */
  private static final double LONGEST_STEP = 0.9;

  /** How far later iterations may go beyond the first step. */
  private static final Newton.Reach REACH = new Newton.Reach(LONGEST_STEP, 0.35, 0.02);

  private static final int MOST_ITERATIONS = 12;

  /**
   * A line this much shorter than at rest, where steps shrink to nothing, is drawn in whole [1].
   */
  private static final double NO_LENGTH = 0.02;

  private final MeshSolver solver;
  private final double shortest;
  final RodState state;
  private LineForces lines;
  private LoadSet held;
  private final RodState tried;

  /**
   * From the rest shape of a mesh.
   *
   * @param shortest the part of the load below which a step counts as none [1]
   */
  PathFollower(MeshSolver solver, double shortest) {
    this.solver = solver;
    this.shortest = shortest;
    state = new RodState(solver.mesh);
    state.copyFrom(solver.start);
    tried = new RodState(solver.mesh);
    held = solver.initial;
    lines = new LineForces(solver.initial.lines, solver.startTensions.clone());
  }

  /**
   * How far it came.
   *
   * @param arrived whether all stages were reached
   * @param stage the stage it was in
   * @param part how much of that stage's change of load was on [1]
   * @param iterations Newton steps in all
   * @param unstable unstable modes just beyond, 0 when not known
   * @param worst element that moved most in the last attempt
   * @param reason why it stopped; empty when it arrived
   */
  record Arrival(
      boolean arrived,
      int stage,
      double part,
      int iterations,
      int unstable,
      int worst,
      String reason) {}

  LineForces lines() {
    return lines;
  }

  /** The loads under which the state holds. */
  LoadSet loads() {
    return held;
  }

  Arrival run() {
    LoadSet from = solver.initial;
    int iterations = 0;
    Arrival last = null;
    for (int stage = 0; stage < solver.stages.size(); stage++) {
      LoadSet to = solver.stages.get(stage);
      last = follow(from, to, stage, iterations);
      if (!last.arrived()) {
        return last;
      }
      iterations = last.iterations();
      from = to;
    }
    return last;
  }

  private Arrival follow(LoadSet from, LoadSet to, int stage, int before) {
    double part = 0;
    double step = 1;
    int iterations = before;
    int unstable = 0;
    while (part < 1) {
      double next = part + step > 1 - 1e-12 ? 1 : part + step;
      LoadSet loads = LoadSet.blend(from, to, next);
      tried.copyFrom(state);
      LineForces pulled = new LineForces(loads.lines, lines.tension);
      Newton.Report report = solver.newton.correct(tried, pulled, loads, MOST_ITERATIONS, REACH);
      iterations += report.iterations();
      boolean smooth = report.converged() && report.unstable() == 0;
      if (smooth) {
        state.copyFrom(tried);
        lines = pulled;
        held = loads;
        part = next;
        step *= report.firstStep() < 0.5 * LONGEST_STEP ? 2 : 1;
        continue;
      }
      unstable = Math.max(0, report.converged() ? report.unstable() : report.unstableOnTheWay());
      boolean tooLong = report.firstStep() > LONGEST_STEP && report.unstableOnTheWay() == 0;
      step *= tooLong ? Math.min(0.5, 0.8 * LONGEST_STEP / report.firstStep()) : 0.5;
      if (step < shortest) {
        return new Arrival(
            false, stage, part, iterations, unstable, report.worst(), reason(report, unstable));
      }
    }
    return new Arrival(true, stage, 1, iterations, 0, 0, "");
  }

  private String reason(Newton.Report report, int unstable) {
    lines.lay(state);
    for (int i = 0; i < lines.tension.length; i++) {
      double atRest = LineForces.distance(solver.rest, lines.lines.get(i));
      if (lines.tension[i] > 0 && lines.length[i] < NO_LENGTH * atRest) {
        return Newton.ENDS_MEET;
      }
    }
    return report.converged() || unstable > 0 || report.reason().equals(Newton.STRAYS)
        ? "beyond this load it jumps or falls away"
        : report.reason();
  }
}
