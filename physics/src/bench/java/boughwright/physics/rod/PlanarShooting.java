// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.nonstiff.ExplicitRungeKuttaIntegrator;

/**
 * The peer: shooting with the integrators of Hipparchus for one planar rod, cut down to what such a
 * rod needs. The moment follows from the place and the force, so three equations are integrated
 * (angle, x, z), and one number is sought by the secant method: the moment at the clamp under a
 * weight, the angle of the line under a guy-line (a line of constant tension passes through its
 * anchor, which gives the moment at the clamp).
 */
public final class PlanarShooting {
  /** Integrates from the clamp to the load. */
  private interface Sweep {
    double[] end(OrdinaryDifferentialEquation rod, double[] start, double length);
  }

  private final Sweep sweep;
  private final double rootTolerance;
  private final PlanarRod rod;
  private int shots;

  private PlanarShooting(PlanarRod rod, double rootTolerance, Sweep sweep) {
    this.rod = rod;
    this.rootTolerance = rootTolerance;
    this.sweep = sweep;
  }

  /** Shoots with an integrator that chooses its steps. */
  public static PlanarShooting adaptive(
      BendCase bend, AdaptiveStepsizeIntegrator integrator, double rootTolerance) {
    return new PlanarShooting(
        PlanarRod.of(bend),
        rootTolerance,
        (rod, start, length) ->
            integrator.integrate(rod, new ODEState(0, start), length).getPrimaryState());
  }

  /** Shoots with a fixed number of single steps. */
  public static PlanarShooting fixed(
      BendCase bend, ExplicitRungeKuttaIntegrator integrator, int steps, double rootTolerance) {
    return new PlanarShooting(
        PlanarRod.of(bend),
        rootTolerance,
        (rod, start, length) -> {
          double[] y = start;
          for (int k = 0; k < steps; k++) {
            y = integrator.singleStep(rod, length * k / steps, y, length * (k + 1) / steps);
          }
          return y;
        });
  }

  /** Finds the tip, from the unbent state [m]. */
  public Point3 solve() {
    double last = rod.unbent();
    double[] end = shoot(last);
    double lastMiss = rod.miss(end);
    double now = rod.second();
    shots = 1;
    while (shots < 50) {
      end = shoot(now);
      shots++;
      double miss = rod.miss(end);
      double step = -miss * (now - last) / (miss - lastMiss);
      last = now;
      lastMiss = miss;
      now += step;
      if (!(Math.abs(step) > rootTolerance * rod.scale())) {
        break;
      }
    }
    return rod.tip(end);
  }

  /** Shots of the last solve. */
  public int shots() {
    return shots;
  }

  private double[] shoot(double unknown) {
    rod.aim(unknown);
    return sweep.end(rod, rod.start(), rod.loadedLength());
  }
}
