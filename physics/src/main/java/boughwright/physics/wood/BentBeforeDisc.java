// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionResponse;

/**
 * A whole round section that has flowed before: {@link FreshDisc} and what memory changes of it,
 * the difference of the same fibres with and without memory. Bent farther than ever before in its
 * old plane, it is fresh again to rounding, whatever the fibres' number.
 */
final class BentBeforeDisc implements WoodSection {
  private final FreshDisc fresh;
  private final FibreSection forgetful;
  private final FibreSection remembering;
  private final double torsion;
  private final double farthest;

  BentBeforeDisc(FreshDisc fresh, FibreSection forgetful, FibreSection remembering, Ends ends) {
    this.fresh = fresh;
    this.forgetful = forgetful;
    this.remembering = remembering;
    torsion = ends.torsion();
    farthest = ends.farthest();
  }

  /**
   * What a section needs besides bending.
   *
   * @param torsion torsional stiffness [N m2]
   * @param farthest curvature that stands for one without bound [1/m]
   */
  record Ends(double torsion, double farthest) {}

  /** Once time has passed, it is its fibres alone. */
  @Override
  public WoodSection after(double e1, double e2, double e3, Spell spell) {
    FibreSection next = remembering.after(e1, e2, e3, spell);
    return spell.isNothing()
        ? new BentBeforeDisc(fresh, forgetful, next, new Ends(torsion, farthest))
        : next;
  }

  @Override
  public WoodSection going(double[] from, double[] to, Spell spell) {
    return remembering.going(from, to, spell);
  }

  @Override
  public WoodSection freed() {
    return this;
  }

  @Override
  public void respond(double e1, double e2, double e3, SectionResponse out) {
    SectionResponse without = new SectionResponse();
    SectionResponse with = new SectionResponse();
    forgetful.respond(e1, e2, 0, without);
    remembering.respond(e1, e2, 0, with);
    fresh.respond(e1, e2, e3, out);
    out.m1 += with.m1 - without.m1;
    out.m2 += with.m2 - without.m2;
    out.k11 += with.k11 - without.k11;
    out.k12 += with.k12 - without.k12;
    out.k22 += with.k22 - without.k22;
    out.energy += with.energy - without.energy;
  }

  @Override
  public double[] strainUnder(double m1, double m2, double m3) {
    double[] bending = StrainSearch.under(this, m1, m2, farthest);
    return new double[] {bending[0], bending[1], m3 / torsion};
  }

  @Override
  public boolean canCarry(double m1, double m2) {
    return fresh.canCarry(m1, m2);
  }

  @Override
  public double stiffnessAtRest() {
    return fresh.stiffnessAtRest();
  }

  @Override
  public FibreStrains fibres(double e1, double e2) {
    FibreStrains whole = fresh.fibres(e1, e2);
    double shift = remembering.middle(e1, e2) - forgetful.middle(e1, e2);
    return new FibreStrains(
        Math.max(0, whole.tension() + shift), Math.max(0, whole.compression() - shift));
  }
}
