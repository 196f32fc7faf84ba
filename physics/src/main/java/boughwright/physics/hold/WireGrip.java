// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

/**
 * What a strand adds where it grips the bark and cannot slip along it: it works like reinforcement,
 * stretched on the outside of the bend and pushed on the inside. How much of it a coil on bark has,
 * nobody measured; all of it is the most a coil can hold.
 *
 * <p>With the wire's middle line at a distance rho from the branch's axis and a slant b, a place at
 * an angle phi round the branch is strained by curvature x rho x cos^2 b x cos phi along the wire.
 * Not changed once made.
 */
final class WireGrip {
  private final double moe;
  private final double flow;
  private final double area;
  private final double arm;
  private final double cos;

  /**
   * A strand.
   *
   * @param metal its metal
   * @param shape how it lies
   * @param branch diameter over bark of what it is wound on [m]
   * @param flow mean flow stress of the hardened strand [Pa]
   */
  WireGrip(WireMetal metal, CoilShape shape, double branch, double flow) {
    moe = metal.moe();
    this.flow = flow;
    area = Math.PI / 4 * shape.gauge() * shape.gauge();
    arm = (branch + shape.gauge()) / 2;
    cos = Math.cos(shape.angle());
  }

  /** Curvature of the branch at which the most strained place of a turn begins to flow [1/m]. */
  double yield() {
    return flow / moe / (arm * cos * cos);
  }

  /**
   * The moment of one strand, all places round a turn together.
   *
   * @param curvature curvature of the branch since it was wound, 0 or more [1/m]
   * @return [N m]
   */
  double moment(double curvature) {
    return area * arm * cos * mean(curvature * arm * cos * cos);
  }

  /** Mean over a turn of the stress times cos phi, at a strain of the most strained place [Pa]. */
  private double mean(double most) {
    double limit = flow / moe;
    if (most <= limit) {
      return moe * most / 2;
    }
    double from = Math.acos(limit / most);
    double elastic = moe * most * (Math.PI / 4 - from / 2 - Math.sin(2 * from) / 4);
    return 2 / Math.PI * (flow * Math.sin(from) + elastic);
  }
}
