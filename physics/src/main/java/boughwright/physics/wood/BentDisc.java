// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How every round section of green wood bends from fresh: fibres linear in tension; in compression
 * linear, then flowing at the crushing stress; no net axial force.
 *
 * <p>Nothing but one number decides: x, curvature times radius over the strain at which flow
 * begins. Moments are over the one at which flow begins ({@code E pi r^3 / 4} times that strain),
 * strains over that strain. Below 1 all are x itself; above, they follow from {@link DiscSegment},
 * tabulated over the root of x - 1, in which they are smooth. The moment tends to 4: one fibre
 * pulls, all others push.
 *
 * <p>Beyond the table, at a hundred times the strain at which flow begins, laws of power go on with
 * the same value and slope.
 */
final class BentDisc {
  /** What the moment tends to and never reaches [1]. */
  static final double CAPACITY = 4;

  /** Curvature that stands for one without bound, as under a moment that cannot be carried [1]. */
  static final double FARTHEST = 1e4;

  private static final int CELLS_PER_ONE = 64;
  private static final int CELLS = 10 * CELLS_PER_ONE;
  private static final double CELL = 1.0 / CELLS_PER_ONE;
  private static final CubicTable MOMENT = new CubicTable(CELL, CELLS);
  private static final CubicTable TENSION = new CubicTable(CELL, CELLS);
  private static final double[] ENERGY = new double[CELLS + 1];

  /**
   * Where the table ends. Wood was bent to a fifth of this at most before it broke, so what a
   * section would have to be bent beyond it to carry, it does not carry.
   */
  static final double LAST = 1 + CELL * CELLS * CELL * CELLS;

  private static final double MISSING;
  private static final double MOMENT_POWER;
  private static final double TENSION_AT_LAST;
  private static final double TENSION_POWER;

  static {
    DiscSegment segment = DiscSegment.of(Math.PI);
    BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(1e-15, 1e-15, 5);
    double half = Math.PI;
    for (int i = 0; i <= CELLS; i++) {
      double u = i * CELL;
      if (i > 0) {
        double aim = 1 / (1 + u * u);
        half =
            solver.solve(200, h -> 1 / DiscSegment.of(h).curvature() - aim, 0.1, half, 0.9 * half);
        segment = DiscSegment.of(half);
      }
      MOMENT.set(i, segment.moment(), 2 * u * segment.slope());
      TENSION.set(i, segment.tension(), 2 * u * segment.tensionSlope());
    }
    ENERGY[0] = 0.5;
    for (int i = 0; i < CELLS; i++) {
      ENERGY[i + 1] = ENERGY[i] + MOMENT.workInCell(i, 1);
    }
    MISSING = CAPACITY - segment.moment();
    MOMENT_POWER = segment.slope() * LAST / MISSING;
    TENSION_AT_LAST = segment.tension();
    TENSION_POWER = segment.tensionSlope() * LAST / segment.tension();
  }

  private BentDisc() {}

  /** Moment at a curvature of at least 0. */
  static double moment(double x) {
    if (x <= 1) {
      return x;
    }
    return x < LAST
        ? MOMENT.value(Math.sqrt(x - 1))
        : CAPACITY - MISSING * Math.pow(LAST / x, MOMENT_POWER);
  }

  /** Rate of the moment over curvature. */
  static double slope(double x) {
    if (x <= 1) {
      return 1;
    }
    return x < LAST
        ? MOMENT.slopeOverDouble(Math.sqrt(x - 1))
        : MISSING * MOMENT_POWER / x * Math.pow(LAST / x, MOMENT_POWER);
  }

  /** Stored and spent work per length; its rate over curvature is the moment. */
  static double energy(double x) {
    if (x <= 1) {
      return 0.5 * x * x;
    }
    if (x < LAST) {
      double u = Math.sqrt(x - 1);
      int i = (int) (u * CELLS_PER_ONE);
      return ENERGY[i] + MOMENT.workInCell(i, u * CELLS_PER_ONE - i);
    }
    double rest = 1 - MOMENT_POWER;
    return ENERGY[CELLS]
        + CAPACITY * (x - LAST)
        - MISSING * LAST / rest * (Math.pow(x / LAST, rest) - 1);
  }

  /** Strain of the most stretched fibre; that of the most compressed is 2 x less this. */
  static double tension(double x) {
    if (x <= 1) {
      return x;
    }
    return x < LAST
        ? TENSION.value(Math.sqrt(x - 1))
        : TENSION_AT_LAST * Math.pow(x / LAST, TENSION_POWER);
  }

  /** The curvature that stands for one without bound in a section of some wood [1/m]. */
  static double farthest(SegmentWood wood, double radius) {
    return wood.isElastic() ? Double.POSITIVE_INFINITY : FARTHEST * wood.yieldStrain() / radius;
  }

  /** Whether a section carries a moment of at least 0 in a bend that wood can be in. */
  static boolean carries(double moment) {
    return moment < CAPACITY - MISSING;
  }

  /** The curvature that no section of some wood can be bent to and hold [1/m]. */
  static double last(SegmentWood wood, double radius) {
    return wood.isElastic() ? Double.POSITIVE_INFINITY : LAST * wood.yieldStrain() / radius;
  }

  /** The curvature under a moment of at least 0; {@link #FARTHEST} for what cannot be carried. */
  static double curvatureUnder(double moment) {
    if (moment <= 1) {
      return moment;
    }
    if (moment <= CAPACITY - MISSING) {
      double u = MOMENT.inverse(moment);
      return 1 + u * u;
    }
    double left = (CAPACITY - moment) / MISSING;
    return left > 0 ? Math.min(FARTHEST, LAST * Math.pow(left, -1 / MOMENT_POWER)) : FARTHEST;
  }

  /** The curvature at which the most stretched fibre comes to a strain of at least 0. */
  static double curvatureAtTension(double strain) {
    if (strain <= 1) {
      return strain;
    }
    if (strain <= TENSION_AT_LAST) {
      double u = TENSION.inverse(strain);
      return 1 + u * u;
    }
    return LAST * Math.pow(strain / TENSION_AT_LAST, 1 / TENSION_POWER);
  }
}
