// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.physics.wood.FibreIntegral;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * The curvature of a round section under a moment, both over their values where flow begins: a
 * spline of Hipparchus through {@link FibreIntegral}, dense where flow begins.
 */
final class FibreBending {
  private static final int KNOTS = 1500;

  /** Square root of the largest curvature beyond 1. */
  private static final double LAST = 9;

  private static final PolynomialSplineFunction CURVATURE = spline();

  private FibreBending() {}

  private static PolynomialSplineFunction spline() {
    double[] moment = new double[KNOTS + 1];
    double[] curvature = new double[KNOTS + 1];
    for (int i = 0; i <= KNOTS; i++) {
      double root = LAST * i / KNOTS;
      curvature[i] = 1 + root * root;
      moment[i] = FibreIntegral.DISC.at(curvature[i]).moment() / (Math.PI / 4);
    }
    return new SplineInterpolator().interpolate(moment, curvature);
  }

  /** The curvature; the last one where the moment is larger still, as an iteration may try. */
  static double curvature(double moment) {
    double[] knots = CURVATURE.getKnots();
    return CURVATURE.value(Math.max(knots[0], Math.min(moment, knots[KNOTS])));
  }
}
