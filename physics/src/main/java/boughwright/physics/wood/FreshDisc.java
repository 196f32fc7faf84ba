// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionResponse;

/**
 * A whole round section of green wood that has never flowed before: {@link BentDisc} in the plane
 * of bending, whatever its direction, and straight-line torsion, GJ = G pi r^4 / 2.
 */
final class FreshDisc implements WoodSection {
  /** Bending stiffness at rest and torsional stiffness [N m2]. */
  private final double bending;

  private final double torsion;

  /** Curvature at which flow begins [1/m]. */
  private final double yield;

  private final double yieldStrain;

  private final SegmentWood wood;
  private final double radius;

  FreshDisc(SegmentWood wood, double radius) {
    this.wood = wood;
    this.radius = radius;
    double squared = radius * radius;
    double quarter = Math.PI / 4 * squared * squared;
    bending = wood.moe() * quarter;
    torsion = wood.shearModulus() * 2 * quarter;
    yieldStrain = wood.yieldStrain();
    yield = yieldStrain / radius;
  }

  @Override
  public void respond(double e1, double e2, double e3, SectionResponse out) {
    double squared = e1 * e1 + e2 * e2;
    out.m3 = torsion * e3;
    out.k33 = torsion;
    out.k12 = 0;
    out.k13 = 0;
    out.k23 = 0;
    double twist = 0.5 * out.m3 * e3;
    if (squared <= yield * yield) {
      out.m1 = bending * e1;
      out.m2 = bending * e2;
      out.energy = 0.5 * bending * squared + twist;
      out.k11 = bending;
      out.k22 = bending;
      return;
    }
    double curvature = Math.sqrt(squared);
    double x = curvature / yield;
    double across = bending * BentDisc.moment(x) / x;
    double along = bending * BentDisc.slope(x);
    double c1 = e1 / curvature;
    double c2 = e2 / curvature;
    out.m1 = across * e1;
    out.m2 = across * e2;
    out.energy = bending * yield * yield * BentDisc.energy(x) + twist;
    out.k11 = across + (along - across) * c1 * c1;
    out.k22 = across + (along - across) * c2 * c2;
    out.k12 = (along - across) * c1 * c2;
  }

  @Override
  public double[] strainUnder(double m1, double m2, double m3) {
    double moment = Math.sqrt(m1 * m1 + m2 * m2);
    double first = bending * yield;
    double flexibility =
        moment <= first ? 1 / bending : yield * BentDisc.curvatureUnder(moment / first) / moment;
    return new double[] {flexibility * m1, flexibility * m2, m3 / torsion};
  }

  @Override
  public boolean canCarry(double m1, double m2) {
    return BentDisc.carries(Math.hypot(m1, m2) / (bending * yield));
  }

  @Override
  public double stiffnessAtRest() {
    return bending;
  }

  @Override
  public FibreStrains fibres(double e1, double e2) {
    double x = Math.sqrt(e1 * e1 + e2 * e2) / yield;
    double tension = BentDisc.tension(x);
    return new FibreStrains(yieldStrain * tension, yieldStrain * (2 * x - tension));
  }

  @Override
  public WoodSection after(double e1, double e2, double e3, Spell spell) {
    boolean strained = e1 != 0 || e2 != 0 || e3 != 0;
    if (spell.ring() > 0 || strained && !spell.isNothing()) {
      return FibreSection.aging(wood, radius).after(e1, e2, e3, spell);
    }
    if (e1 * e1 + e2 * e2 <= yield * yield) {
      return this;
    }
    FibreSection fibres = new FibreSection(wood, SectionShape.disc(radius));
    BentBeforeDisc.Ends ends = new BentBeforeDisc.Ends(torsion, BentDisc.FARTHEST * yield);
    return new BentBeforeDisc(this, fibres, fibres.after(e1, e2, e3, Spell.NONE), ends);
  }

  @Override
  public WoodSection going(double[] from, double[] to, Spell spell) {
    return FibreSection.aging(wood, radius).going(from, to, spell);
  }

  @Override
  public WoodSection freed() {
    return this;
  }
}
