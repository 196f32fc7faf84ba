// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * One strand of a coil, hardened by being wound on.
 *
 * <p>Winding strains a fibre in proportion to its distance from the wire's middle line toward the
 * bark, and its flow stress follows by Hollomon's law; so the section is hard next to the bark and
 * outside, and soft between. Let go, the wound wire springs back elastically, and stresses stay
 * locked in that help it to flow early. When the branch bends, the strand is bent and twisted by
 * turns: where it crosses the plane of the bend it is bent about the line through the branch's
 * axis, the soft way; a quarter turn on it is bent the hard way and twisted. The place round the
 * turn that is fully plastic first decides the strength. Not changed once made.
 */
public final class WireWound {
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(16, 0, 1);

  /** Strain of surface fibres at which a wound strand is said to flow throughout (a choice) [1]. */
  private static final double FLOWING = 0.01;

  /** Torque over moment of a fully plastic round wire, by von Mises: pi / (2 sqrt 3) [1]. */
  private static final double TORQUE = Math.PI / (2 * Math.sqrt(3));

  private final WireMetal metal;
  private final double radius;
  private final double inertia;
  private final double windingStrain;
  private final double bendingPart;
  private final double turnPart;

  /** Stress per distance from the middle that winding lets go of when it springs back [Pa/m]. */
  private final double sprung;

  /**
   * A strand just wound on.
   *
   * @param metal its metal
   * @param shape how it lies
   * @param branch diameter over bark of what it is wound on [m]
   */
  public WireWound(WireMetal metal, CoilShape shape, double branch) {
    if (!(branch > 0) || Double.isInfinite(branch)) {
      throw new IllegalArgumentException("a branch has a thickness, not " + branch);
    }
    this.metal = metal;
    radius = shape.gauge() / 2;
    inertia = Math.PI / 4 * Math.pow(radius, 4);
    windingStrain = shape.windingStrain(branch);
    bendingPart = shape.bendingPart(metal.poisson());
    turnPart = turnPart(shape.angle());
    sprung = quarters((across, in) -> wound(in) * in) / inertia;
  }

  /** Flow stress of a fibre after winding, and after straining it further [Pa]. */
  private double flow(double in, double further) {
    return metal.flowStress(windingStrain * in + further);
  }

  /** Stress of a fibre at the end of winding [Pa]. */
  private double wound(double in) {
    return Math.min(metal.moe() * windingStrain * in, flow(in, 0));
  }

  /** Stress locked in once the wound wire has sprung back, whatever its sign [Pa]. */
  private double locked(double in) {
    return Math.abs(wound(in) - sprung * radius * in);
  }

  /** Bending stiffness of the straight strand [N m2]. */
  public double stiffness() {
    return metal.moe() * inertia;
  }

  /** Curvature of the branch at which a fibre of the strand's surface comes to a strain [1/m]. */
  double branchCurvature(double strain) {
    return turnPart * strain / (radius * bendingPart);
  }

  /**
   * The moment with which one strand of the coil answers, all turns together.
   *
   * @param curvature curvature of the branch since it was wound, 0 or more [1/m]
   * @return [N m]
   */
  public double moment(double curvature) {
    return turnPart * softMoment(bendingPart * curvature / turnPart);
  }

  /**
   * The moment that the strand stands when it is bent until fibres of its surface are strained a
   * further hundredth: it flows nearly throughout, and hardens little more [N m].
   */
  public double holds() {
    return moment(branchCurvature(FLOWING));
  }

  /** Flow stress of the hardened strand, the mean over its section [Pa]. */
  double meanFlow() {
    return quarters((across, in) -> flow(in, 0)) / (Math.PI * radius * radius * radius);
  }

  /** The moment about the line through the branch's axis at a curvature of the wire itself. */
  private double softMoment(double local) {
    return quarters(
        (across, in) -> {
          double strain = local * radius * across;
          double most = flow(in, strain);
          double before = Math.min(most, locked(in));
          double onward = Math.min(metal.moe() * strain, most - before);
          double backward = Math.min(metal.moe() * strain, most + before);
          return (onward + backward) / 2 * across;
        });
  }

  /**
   * What is left of the strength about the soft axis where bending and torsion act together, a
   * quarter turn on: moment and torque over their plastic values, squared, add up to 1 (a lower
   * bound; R. Hill and M. P. L. Siebel, 1953; from memory). At most 1 [1].
   */
  double turnPart() {
    return turnPart;
  }

  private double turnPart(double angle) {
    double soft = quarters((across, in) -> flow(in, 0) * across);
    double hard = quarters((across, in) -> flow(in, 0) * in);
    double torque = quarters((across, in) -> flow(in, 0) * Math.hypot(across, in)) / Math.sqrt(3);
    return Math.min(1, 1 / (soft * Math.hypot(Math.cos(angle) / hard, Math.sin(angle) / torque)));
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
    double scale = 2 * Math.PI * radius * radius * radius;
    return RULE.integrate(
        rho ->
            RULE.integrate(
                part -> {
                  double turn = part * Math.PI / 2;
                  return scale * rho * f.at(rho * Math.sin(turn), rho * Math.cos(turn));
                }));
  }
}
