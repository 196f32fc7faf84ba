// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Newton's method for the equilibrium of a mesh under fixed loads; owns the workspaces of a mesh.
 *
 * <p>Two ways: {@link #correct} goes plainly to the nearest equilibrium, whatever its stability;
 * {@link #minimise} goes down in energy to a stable one, and needs every line held by tension.
 */
final class Newton {
  static final String ENDS_MEET = "a line has no length left: its two ends have come together";

  static final String STRAYS = "the iteration strays from where its first step pointed";

  /** Turns smaller than this end the iteration; the next would be its square [rad]. */
  private static final double SETTLED = 1e-6;

  /** A change of tension that moves the ends by no more than this part of the line is none [1]. */
  private static final double NO_MOVE = 1e-12;

  /**
   * So does a small step after which the next, by the rate of the last two, is below this [rad].
   */
  static final double NEGLIGIBLE = 1e-11;

  /** Largest turn of one iteration [rad]. */
  private static final double LONGEST_STEP = 1.5;

  private static final int MOST_ITERATIONS = 60;

  /** Part of the section tangent added when the energy curves down, and its growth and decay. */
  private static final double FIRST_STIFFENING = 0.5;

  private static final double STIFFENING_RATIO = 8;

  /** Part of the predicted decrease that counts as progress (Nocedal and Wright 2006, ch. 3). */
  private static final double ARMIJO = 1e-4;

  private final RodMesh mesh;
  private final ForceSweep forces;
  private final NodeTerms nodes;
  private final Tangent tangent;
  private final SectionResponse response = new SectionResponse();
  private final double[] atNode;
  private final double[] atMiddle;
  private final RodState held;
  private final LineCoupling coupling;
  private final double[] tensionStep;
  private final double negligible;

  /**
   * Makes room for a mesh.
   *
   * @param lines how many lines
   * @param negligible a step foretold to be smaller than this is not taken [rad]
   */
  Newton(RodMesh mesh, int lines, double negligible) {
    this.negligible = negligible;
    this.mesh = mesh;
    forces = new ForceSweep(mesh);
    nodes = new NodeTerms(mesh);
    tangent = new Tangent(mesh);
    atNode = new double[3 * mesh.count];
    atMiddle = new double[3 * mesh.count];
    held = new RodState(mesh);
    coupling = new LineCoupling(mesh, lines);
    tensionStep = new double[lines];
  }

  /**
   * How an iteration ended.
   *
   * @param converged whether it reached an equilibrium
   * @param iterations steps taken
   * @param unstable unstable modes there
   * @param unstableOnTheWay most unstable modes at any step
   * @param firstStep largest turn of the first step [rad]
   * @param laterSteps sum of the largest turns of the other steps [rad]
   * @param worst element turned most in the first step
   * @param reason why it did not converge, in words; empty if it did
   */
  record Report(
      boolean converged,
      int iterations,
      int unstable,
      int unstableOnTheWay,
      double firstStep,
      double laterSteps,
      int worst,
      String reason) {}

  /**
   * How far an iteration may go before it is given up.
   *
   * @param first longest first step [rad]
   * @param part how far all later steps may go in sum, as a part of the first [1]
   * @param floor and this much more [rad]
   */
  record Reach(double first, double part, double floor) {
    static final Reach ANYWHERE = new Reach(Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY);

    double later(double firstStep) {
      return part * firstStep + floor;
    }
  }

  private static final class Log {
    int iterations;
    int unstable;
    int mostUnstable;
    double first;
    double later;
    int worst;
    int moves;
    double last;
    double beforeLast;
    boolean whole;

    void step(double size, int element) {
      beforeLast = whole ? last : 0;
      last = size;
      whole = true;
      if (moves++ == 0) {
        first = size;
        worst = element;
      } else {
        later += size;
      }
    }

    /** Without a potential, the signs of the symmetric tangent say nothing of stability. */
    void forgetStability() {
      unstable = 0;
      mostUnstable = 0;
    }

    /** Notes that the last step was not a whole step of Newton's method. */
    void damped() {
      whole = false;
    }

    /** Whether what is left is negligible, by quadratic convergence at the rate seen last. */
    boolean settled(double negligible) {
      double rate = last / beforeLast;
      return whole && (last < SETTLED || last * rate * rate < negligible);
    }

    Report end(String reason) {
      return new Report(
          reason.isEmpty(), iterations, unstable, mostUnstable, first, later, worst, reason);
    }
  }

  /**
   * Goes plainly to an equilibrium from a state near it.
   *
   * @param state where to start, written over
   * @param lines lines with the tensions to start from, written over
   * @param loads the loads
   * @param most most iterations
   * @param reach how far it may go
   */
  Report correct(RodState state, LineForces lines, LoadSet loads, int most, Reach reach) {
    Log log = new Log();
    lines.lay(state);
    while (log.iterations < most) {
      if (hasNoLength(lines)) {
        return log.end(ENDS_MEET);
      }
      if (!formAt(state, lines, loads, 0, log)) {
        return log.end("nothing gives way to a line: it pulls straight along the rods");
      }
      if (!loads.hasPotential()) {
        log.forgetStability();
      }
      solveStep(lines, log);
      if (lines.release(tensionStep)) {
        continue;
      }
      double size = logStep(log);
      if (!Double.isFinite(size)) {
        return log.end("a step has no size");
      }
      if (log.moves == 1 && size > reach.first()) {
        return log.end("the step is too long");
      }
      if (log.later > reach.later(log.first)) {
        return log.end(STRAYS);
      }
      double part = Math.min(1, LONGEST_STEP / size);
      if (part < 1) {
        log.damped();
      }
      state.move(state, atNode, atMiddle, part);
      boolean changed = moveTensions(lines, part);
      lines.lay(state);
      lines.takeUp();
      if (log.settled(negligible) && !changed && !isTooLong(lines)) {
        return log.end("");
      }
    }
    return log.end("the iteration does not settle");
  }

  /** Goes down in energy to a stable equilibrium; every line must be held by tension. */
  Report minimise(RodState state, LineForces lines, LoadSet loads) {
    Log log = new Log();
    double stiffening = 0;
    lines.lay(state);
    double energy = Energy.of(state, loads, lines, response);
    while (log.iterations < MOST_ITERATIONS) {
      if (hasNoLength(lines)) {
        return log.end(ENDS_MEET);
      }
      stiffening = stiffening < 0.1 ? 0 : stiffening / STIFFENING_RATIO;
      while (!formAt(state, lines, loads, stiffening, log) || log.unstable > 0) {
        stiffening = stiffening == 0 ? FIRST_STIFFENING : STIFFENING_RATIO * stiffening;
        if (stiffening > 1e12) {
          return log.end("no way down in energy was found");
        }
      }
      solveStep(lines, log);
      if (!Double.isFinite(logStep(log))) {
        return log.end("a step has no size");
      }
      if (stiffening > 0) {
        log.damped();
      }
      energy = descend(state, lines, loads, energy, log);
      if (Double.isNaN(energy)) {
        return log.end("energy does not fall along the step");
      }
      if (log.settled(negligible)) {
        return log.end("");
      }
    }
    return log.end("the iteration does not settle");
  }

  /** Goes along the step until the energy has fallen; returns it, or NaN if it does not fall. */
  private double descend(RodState state, LineForces lines, LoadSet loads, double before, Log log) {
    double slope = slope();
    double part = Math.min(1, LONGEST_STEP / log.last);
    double floor = 1e-12 * (Math.abs(before) + Math.abs(slope));
    held.copyFrom(state);
    for (int halvings = 0; halvings < 30; halvings++) {
      if (part < 1) {
        log.damped();
      }
      state.move(held, atNode, atMiddle, part);
      lines.lay(state);
      double energy = Energy.of(state, loads, lines, response);
      if (energy <= before + ARMIJO * part * slope + floor) {
        return energy;
      }
      part /= 2;
    }
    return Double.NaN;
  }

  private boolean formAt(
      RodState state, LineForces lines, LoadSet loads, double stiffening, Log log) {
    forces.run(loads, lines);
    nodes.gather(state, loads, lines, forces);
    tangent.form(state, forces, nodes, stiffening);
    int unstable = coupling.form(state, lines, tangent);
    log.unstable = unstable;
    log.mostUnstable = Math.max(log.mostUnstable, unstable);
    return unstable >= 0;
  }

  private void solveStep(LineForces lines, Log log) {
    log.iterations++;
    tangent.descent(atNode, atMiddle);
    tangent.reduce(atNode, atMiddle);
    coupling.correct(atNode, atMiddle, lines, tensionStep);
    tangent.finish(atNode, atMiddle);
  }

  /** The largest turn of the step. */
  private double logStep(Log log) {
    double most = 0;
    int element = 0;
    for (int e = 0; e < mesh.count; e++) {
      double x = atNode[3 * e];
      double y = atNode[3 * e + 1];
      double z = atNode[3 * e + 2];
      double squared = x * x + y * y + z * z;
      if (!(squared <= most)) {
        most = squared;
        element = e;
      }
    }
    double size = Math.sqrt(most);
    log.step(size, element);
    return size;
  }

  private double slope() {
    double sum = 0;
    for (int k = 0; k < atNode.length; k++) {
      sum += tangent.nodeGradient[k] * atNode[k] + tangent.middleGradient[k] * atMiddle[k];
    }
    return sum;
  }

  /** Moves the tensions of lines of given length; true when one of them is not settled. */
  private boolean moveTensions(LineForces lines, double part) {
    boolean changed = false;
    for (int i = 0; i < tensionStep.length; i++) {
      if (lines.lines.get(i).byLength()) {
        double change = Math.abs(tensionStep[i]);
        changed |=
            change > SETTLED * lines.tension[i]
                && change * coupling.givePerTension(i) > NO_MOVE * lines.length[i];
        lines.tension[i] = Math.max(0, lines.tension[i] + part * tensionStep[i]);
      }
    }
    return changed;
  }

  private static boolean isTooLong(LineForces lines) {
    for (int i = 0; i < lines.lines.size(); i++) {
      if (lines.lines.get(i).byLength() && lines.excess(i) > 1e-7 * lines.lines.get(i).value()) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasNoLength(LineForces lines) {
    for (int i = 0; i < lines.lines.size(); i++) {
      if (lines.tension[i] > 0 && !(lines.length[i] > 1e-9)) {
        return true;
      }
    }
    return false;
  }
}
