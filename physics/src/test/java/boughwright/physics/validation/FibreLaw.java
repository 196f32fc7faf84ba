// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A round section summed up from strips by the midpoint rule, written from the formulas of
 * docs/theory and sharing nothing with the program. Strains are in units of the strain at which
 * fibres begin to flow, the moment in units of the one at which they do.
 *
 * <p>Compressed fibres follow a straight line up to 1 and from there flow, or lose some of their
 * stress first.
 */
final class FibreLaw {
  private static final int STRIPS = 400;
  private static final int KNOTS = 160;

  /** Curvature up to which the section is tabulated, in those at which flow begins. */
  private static final double FARTHEST = 200;

  /** Stress lost per strain beyond 1, until the residual is reached. */
  private static final double LOSS = 0.15;

  private final double residual;
  private final double[] y = new double[STRIPS];
  private final double[] area = new double[STRIPS];
  private final PolynomialSplineFunction curvatureOfMoment;
  private final PolynomialSplineFunction tensionOfCurvature;
  private final PolynomialSplineFunction momentOfCurvature;
  private final double mostMoment;

  /**
   * A law.
   *
   * @param residual what is left of the crushing stress of fibres far beyond 1; 1 for fibres that
   *     only flow [1]
   */
  FibreLaw(double residual) {
    this.residual = residual;
    for (int k = 0; k < STRIPS; k++) {
      double angle = Math.PI * (k + 0.5) / STRIPS;
      y[k] = Math.cos(angle);
      area[k] = 2 * Math.sin(angle) * Math.sin(angle) * Math.PI / STRIPS;
    }
    double[] x = new double[KNOTS];
    double[] moment = new double[KNOTS];
    double[] tension = new double[KNOTS];
    for (int i = 1; i < KNOTS; i++) {
      x[i] = i <= 20 ? i / 20.0 : Math.pow(FARTHEST, (i - 20.0) / (KNOTS - 21.0));
      double middle = middle(x[i]);
      moment[i] = moment(x[i], middle);
      tension[i] = x[i] + middle;
    }
    AkimaSplineInterpolator spline = new AkimaSplineInterpolator();
    curvatureOfMoment = spline.interpolate(moment, x);
    tensionOfCurvature = spline.interpolate(x, tension);
    momentOfCurvature = spline.interpolate(x, moment);
    mostMoment = moment[KNOTS - 1];
  }

  private double stress(double strain) {
    return strain >= -1 ? strain : -Math.max(residual, 1 + LOSS * (strain + 1));
  }

  /** Strain half-way up the section at which its fibres balance. */
  private double middle(double x) {
    return x <= 1 ? 0 : new BrentSolver(1e-10).solve(200, m -> force(x, m), -x, x);
  }

  private double force(double x, double middle) {
    double sum = 0;
    for (int k = 0; k < STRIPS; k++) {
      sum += area[k] * stress(x * y[k] + middle);
    }
    return sum;
  }

  private double moment(double x, double middle) {
    double sum = 0;
    for (int k = 0; k < STRIPS; k++) {
      sum += area[k] * stress(x * y[k] + middle) * y[k];
    }
    return sum / (Math.PI / 4);
  }

  double mostMoment() {
    return mostMoment;
  }

  /** Curvature under a moment below {@link #mostMoment}. */
  double curvature(double moment) {
    return curvatureOfMoment.value(moment);
  }

  double momentAt(double curvature) {
    return momentOfCurvature.value(curvature);
  }

  /** Strain of the most stretched fibre at a curvature. */
  double tension(double curvature) {
    return tensionOfCurvature.value(curvature);
  }

  /** Curvature at which the most stretched fibre comes to a strain. */
  double curvatureAtTension(double strain) {
    return strain <= 1
        ? strain
        : new BrentSolver(1e-9).solve(200, x -> tension(x) - strain, strain, FARTHEST);
  }
}
