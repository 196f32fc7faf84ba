// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How a straight wire answers being bent from fresh: plane sections stay plane, fibres answer along
 * their stress-strain line, and unloading is elastic.
 */
public final class WireBending {
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(32, 0, 1);

  private final WireStress law;
  private final double halfDepth;
  private final DoubleUnaryOperator width;
  private final double inertia;

  /**
   * A round wire.
   *
   * @param law its metal
   * @param diameter its diameter [m]
   */
  public WireBending(WireStress law, double diameter) {
    this(law, diameter / 2, y -> 2 * Math.sqrt(Math.max(0, diameter * diameter / 4 - y * y)));
  }

  /**
   * A bar whose section is the same on both sides of its middle.
   *
   * @param law its metal
   * @param halfDepth from the middle to the outermost fibre [m]
   * @param width width at a distance from the middle [m]
   */
  WireBending(WireStress law, double halfDepth, DoubleUnaryOperator width) {
    if (!(halfDepth > 0) || Double.isInfinite(halfDepth)) {
      throw new IllegalArgumentException("a wire has a thickness, not " + 2 * halfDepth);
    }
    this.law = law;
    this.halfDepth = halfDepth;
    this.width = width;
    inertia = integral(0, Math.PI / 2, y -> y * y);
  }

  /** Bending stiffness EI [N m2]. */
  public double stiffness() {
    return law.moe() * inertia;
  }

  /** Curvature at which the outermost fibres begin to flow [1/m]. */
  public double yieldCurvature() {
    return law.yieldStrain() / halfDepth;
  }

  /** The moment at a curvature [N m]. */
  public double moment(double curvature) {
    double bent = Math.abs(curvature);
    if (bent <= yieldCurvature()) {
      return stiffness() * curvature;
    }
    double flows = Math.asin(yieldCurvature() / bent);
    DoubleUnaryOperator turning = y -> law.at(bent * y) * y;
    double size = integral(0, flows, turning) + integral(flows, Math.PI / 2, turning);
    return Math.copySign(size, curvature);
  }

  /** The curvature left when a moment that bent the wire so far is taken away [1/m]. */
  public double afterSpringback(double curvature) {
    return curvature - moment(curvature) / stiffness();
  }

  /** Twice the integral of width times f over heights y = halfDepth sin t. */
  private double integral(double from, double to, DoubleUnaryOperator f) {
    return RULE.integrate(
        x -> {
          double t = from + x * (to - from);
          double y = halfDepth * Math.sin(t);
          double across = width.applyAsDouble(y) * halfDepth * Math.cos(t);
          return 2 * across * f.applyAsDouble(y) * (to - from);
        });
  }

  /** The moment at which a round wire flows throughout, stress times d^3 / 6 [N m]. */
  public static double fullyPlastic(double stress, double diameter) {
    return stress * diameter * diameter * diameter / 6;
  }

  /**
   * The moment of a round wire that flows at a stress that stays, in closed form: an elastic core
   * of half-height r sin t, and fibres beyond it at the yield stress.
   *
   * @param moe modulus of elasticity [Pa]
   * @param yield yield stress [Pa]
   * @param diameter [m]
   * @param curvature 0 or more [1/m]
   */
  public static double perfectlyPlastic(
      double moe, double yield, double diameter, double curvature) {
    double r = diameter / 2;
    double core = yield / (moe * curvature * r);
    if (!(core < 1)) {
      return moe * Math.PI / 4 * r * r * r * r * curvature;
    }
    double t = Math.asin(core);
    double cos = Math.cos(t);
    double inside = (t / 8 - Math.sin(4 * t) / 32) / core;
    return 4 * yield * r * r * r * (inside + cos * cos * cos / 3);
  }
}
