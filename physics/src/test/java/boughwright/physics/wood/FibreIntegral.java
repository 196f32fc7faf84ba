// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A section bent in one plane, by Gauss-Legendre quadrature over its height on both sides of the
 * place where flow begins, with Hipparchus. Shares nothing with the laws under test.
 *
 * @param width width of the section at a height from -1 to 1 [1]
 */
public record FibreIntegral(DoubleUnaryOperator width) {
  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();
  private static final int POINTS = 60;

  public static final FibreIntegral DISC = new FibreIntegral(y -> 2 * Math.sqrt(1 - y * y));
  public static final FibreIntegral SQUARE = new FibreIntegral(y -> 2);

  /**
   * A bent section: strains in those at which flow begins.
   *
   * @param moment bending moment about the middle, stresses in those at which flow begins [1]
   * @param tension strain at the height 1 [1]
   * @param compression strain at the height -1, without sign [1]
   */
  public record Bent(double moment, double tension, double compression) {}

  /** Bent by a curvature, with no net axial force. */
  public Bent at(double curvature) {
    DoubleUnaryOperator force = middle -> integral(middle, curvature, 0);
    double middle =
        new BracketingNthOrderBrentSolver(1e-14, 1e-14, 5)
            .solve(200, force::applyAsDouble, -2 * curvature - 2, curvature);
    return new Bent(integral(middle, curvature, 1), middle + curvature, curvature - middle);
  }

  /** Integral of stress times width times a power of the height. */
  private double integral(double middle, double curvature, int power) {
    double flow = Math.max(-1, Math.min(1, (-1 - middle) / curvature));
    return piece(-1, flow, middle, curvature, power) + piece(flow, 1, middle, curvature, power);
  }

  private double piece(double from, double to, double middle, double curvature, int power) {
    if (to - from < 1e-15) {
      return 0;
    }
    // y = -cos a evens out the rounded edge
    double start = Math.acos(-from);
    double end = Math.acos(-to);
    GaussIntegrator gauss = GAUSS.legendre(POINTS, start, end);
    return gauss.integrate(
        a -> {
          double y = -Math.cos(a);
          double stress = Math.max(-1, middle + curvature * y);
          return stress * width.applyAsDouble(y) * Math.pow(y, power) * Math.sin(a);
        });
  }
}
