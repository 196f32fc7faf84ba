// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/**
 * A level tapered cantilever under a weight at its tip, through large angles, with Hipparchus alone
 * and none of this project's mechanics: from the tip inward the angle a below level grows by -M/EI
 * with M = P x, where x is the level distance from the tip (the elastica; Bisshopp and Drucker
 * 1945). The angle at the tip is sought for which the clamp is level.
 *
 * @param length [m]
 * @param thick radius at the clamp [m]
 * @param thin radius at the tip [m]
 * @param moe [Pa]
 */
record DeadLoadCantilever(double length, double thick, double thin, double moe) {
  private static final double TOLERANCE = 1e-9;

  /** How far the tip comes down [m]. */
  double drop(double load) {
    UnivariateFunction clampAngle = tipAngle -> fromTip(load, tipAngle)[0];
    double linear = load * length * length / (moe * Math.PI / 4 * Math.pow(thin, 4));
    double most = Math.min(linear, Math.PI / 2);
    double angle =
        new BracketingNthOrderBrentSolver(1e-10, 1e-12, 5).solve(100, clampAngle, 0, most);
    return fromTip(load, angle)[2];
  }

  /** Angle, level distance and height gone through when the clamp is reached. */
  private double[] fromTip(double load, double tipAngle) {
    OrdinaryDifferentialEquation equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 3;
          }

          @Override
          public double[] computeDerivatives(double s, double[] y) {
            double radius = thin + (thick - thin) * s / length;
            double stiffness = moe * Math.PI / 4 * Math.pow(radius, 4);
            return new double[] {-load * y[1] / stiffness, Math.cos(y[0]), Math.sin(y[0])};
          }
        };
    return new DormandPrince54Integrator(1e-9, length, TOLERANCE, TOLERANCE)
        .integrate(equation, new ODEState(0, new double[] {tipAngle, 0, 0}), length)
        .getPrimaryState();
  }
}
