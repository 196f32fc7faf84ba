// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * How a whole round piece of wood answers bending from fresh: moment and outermost strains from
 * curvature, and back. Cheap enough to be asked for every sample of a tree.
 *
 * @param wood the wood
 * @param radius radius of the wood under bark [m]
 */
public record DiscBending(SegmentWood wood, double radius) {
  public DiscBending {
    if (!(radius > 0) || Double.isInfinite(radius)) {
      throw new IllegalArgumentException("a radius is positive, not " + radius);
    }
  }

  /** The bending moment at which fibres begin to flow; infinite for elastic wood [N m]. */
  public double yieldMoment() {
    return stiffness() * yieldCurvature();
  }

  private double yieldCurvature() {
    return wood.yieldStrain() / radius;
  }

  private double stiffness() {
    return wood.moe() * Math.PI / 4 * radius * radius * radius * radius;
  }

  /** The moment at an added curvature [N m]. */
  public double moment(double curvature) {
    return wood.isElastic()
        ? stiffness() * curvature
        : yieldMoment() * BentDisc.moment(curvature / yieldCurvature());
  }

  /** Strains of the outermost fibres at an added curvature. */
  public FibreStrains strains(double curvature) {
    if (wood.isElastic()) {
      return new FibreStrains(radius * curvature, radius * curvature);
    }
    double x = curvature / yieldCurvature();
    double tension = BentDisc.tension(x);
    return new FibreStrains(wood.yieldStrain() * tension, wood.yieldStrain() * (2 * x - tension));
  }

  /**
   * The added curvature under a moment; a very large one where the moment is at least {@link
   * #capacity} [1/m].
   */
  public double curvatureUnder(double moment) {
    return wood.isElastic()
        ? moment / stiffness()
        : yieldCurvature() * BentDisc.curvatureUnder(moment / yieldMoment());
  }

  /** The added curvature at which the most stretched fibre comes to a strain [1/m]. */
  public double curvatureAtTension(double strain) {
    return wood.isElastic()
        ? strain / radius
        : yieldCurvature() * BentDisc.curvatureAtTension(strain / wood.yieldStrain());
  }

  /** The moment that no curvature reaches; infinite for elastic wood [N m]. */
  public double capacity() {
    return BentDisc.CAPACITY * yieldMoment();
  }
}
