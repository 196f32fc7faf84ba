// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * One strand of a coil, hardened by being wound on.
 *
 * <p>Winding strains a fibre in proportion to its distance from the wire's middle line toward the
 * bark, and its flow stress follows by Hollomon's law; so the section is hard next to the bark and
 * outside, and soft between. When the branch bends, the strand is bent and twisted by turns: where
 * it crosses the plane of the bend it is bent about the line through the branch's axis, the soft
 * way; a quarter turn on it is bent the hard way and twisted. The place round the turn that is
 * fully plastic first decides the strength. Stresses locked in by winding are left out.
 *
 * @param metal its metal
 * @param shape how it lies
 * @param branch diameter over bark of what it is wound on [m]
 */
public record WireWound(WireMetal metal, CoilShape shape, double branch) {
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(16, 0, 1);

  /** Torque over moment of a fully plastic round wire, by von Mises: pi / (2 sqrt 3) [1]. */
  private static final double TORQUE = Math.PI / (2 * Math.sqrt(3));

  public WireWound {
    if (!(branch > 0) || Double.isInfinite(branch)) {
      throw new IllegalArgumentException("a branch has a thickness, not " + branch);
    }
  }

  private double radius() {
    return shape.gauge() / 2;
  }

  /** Bending stiffness of the straight strand [N m2]. */
  public double stiffness() {
    return metal.moe() * Math.PI / 4 * Math.pow(radius(), 4);
  }

  /** Curvature of the branch at which the strand begins to flow [1/m]. */
  double yieldCurvature() {
    return branchCurvature(metal.yield() / metal.moe());
  }

  /** Curvature of the branch at which a fibre of the strand's surface comes to a strain [1/m]. */
  double branchCurvature(double strain) {
    return turnPart() * strain / (radius() * shape.bendingPart(metal.poisson()));
  }

  /**
   * The moment with which one strand of the coil answers, all turns together.
   *
   * @param curvature curvature of the branch since it was wound [1/m]
   * @return [N m]
   */
  public double moment(double curvature) {
    double strength = turnPart();
    double local = shape.bendingPart(metal.poisson()) * curvature / strength;
    return strength * softMoment(local);
  }

  /**
   * The moment about the line through the branch's axis when the wire itself takes a curvature.
   *
   * @param local curvature of the wire since it was wound [1/m]
   */
  private double softMoment(double local) {
    double wound = shape.windingStrain(branch);
    return quarters(
        (across, in) -> {
          double strain = Math.abs(local) * radius() * across;
          double flow = metal.flowStress(wound * in + strain);
          return Math.min(metal.moe() * strain, flow) * across;
        });
  }

  /**
   * What is left of the strength about the soft axis where bending and torsion act together, a
   * quarter turn on: moment and torque over their plastic values, squared, add up to 1 (a lower
   * bound; R. Hill and M. P. L. Siebel, 1953). At most 1 [1].
   */
  double turnPart() {
    double wound = shape.windingStrain(branch);
    double soft = quarters((across, in) -> metal.flowStress(wound * in) * across);
    double hard = quarters((across, in) -> metal.flowStress(wound * in) * in);
    double torque =
        quarters((across, in) -> metal.flowStress(wound * in) * Math.hypot(across, in))
            / Math.sqrt(3);
    double sin = Math.sin(shape.angle());
    double cos = Math.cos(shape.angle());
    return Math.min(1, 1 / (soft * Math.hypot(cos / hard, sin / torque)));
  }

  /** The same of a wire that has one flow stress throughout [1]. */
  static double turnPartUnhardened(double angle) {
    return 1 / Math.hypot(Math.cos(angle), Math.sin(angle) / TORQUE);
  }

  /** A function of the distances from the middle, over the radius. */
  @FunctionalInterface
  private interface OverQuarter {
    double at(double across, double in);
  }

  /** Four times the integral over a quarter of the section, times the radius. */
  private double quarters(OverQuarter f) {
    double r = radius();
    return RULE.integrate(
        rho ->
            RULE.integrate(
                part -> {
                  double turn = part * Math.PI / 2;
                  double value = f.at(rho * Math.sin(turn), rho * Math.cos(turn));
                  return 2 * Math.PI * r * r * r * rho * value;
                }));
  }
}
