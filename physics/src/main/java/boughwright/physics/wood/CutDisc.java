// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionResponse;
import java.util.Arrays;

/**
 * A hollow or slotted section of green wood that has never flowed before. Its answer follows from
 * the areas and moments of the part that flows and the part that does not ({@link CutOutline}):
 * what {@link FibreSection} sums up fibre by fibre, but for its rounded corner, at a small part of
 * the cost. Once bent it is carried on by fibres.
 */
final class CutDisc implements WoodSection {
  private static final int MOST_STEPS = 60;

  private final SegmentWood wood;
  private final SectionShape shape;
  private final CutOutline outline;
  private final double[] whole;
  private final double torsion;
  private Rim rim;

  CutDisc(SegmentWood wood, SectionShape shape) {
    this.wood = wood;
    this.shape = shape;
    outline = new CutOutline(shape);
    whole = outline.whole();
    torsion = wood.shearModulus() * TorsionConstant.of(shape, whole[0], polar());
  }

  /** Polar second moment about the centroid [m4]. */
  private double polar() {
    return whole[3] + whole[5] - (whole[1] * whole[1] + whole[2] * whole[2]) / whole[0];
  }

  private double straightMiddle(double e1, double e2) {
    return (e2 * whole[1] - e1 * whole[2]) / whole[0];
  }

  /**
   * The strain of the axis at which there is no net axial force [1]. Force over that strain is
   * convex and rises, and where nothing flowed its zero lies above, so Newton's method comes down.
   *
   * @param flown receives the sums over what flows, shape (6)
   */
  private double middle(double e1, double e2, double[] flown) {
    double middle = straightMiddle(e1, e2);
    double bend = Math.sqrt(e1 * e1 + e2 * e2);
    if (isStraight(middle, bend)) {
      Arrays.fill(flown, 0);
      return middle;
    }
    double yield = wood.yieldStrain();
    for (int n = 0; n < MOST_STEPS; n++) {
      outline.beyond(e2 / bend, -e1 / bend, (middle + yield) / bend, flown);
      double left = whole[0] - flown[0];
      double force =
          middle * left
              + e1 * (whole[2] - flown[2])
              - e2 * (whole[1] - flown[1])
              - yield * flown[0];
      double step = force / Math.max(left, 1e-6 * whole[0]);
      middle -= step;
      if (Math.abs(step) < 1e-13 * shape.radius() * bend) {
        break;
      }
    }
    return middle;
  }

  private boolean isStraight(double middle, double bend) {
    return shape.radius() * bend - middle <= wood.yieldStrain();
  }

  @Override
  public void respond(double e1, double e2, double e3, SectionResponse out) {
    double[] f = new double[CutOutline.SUMS];
    double m = middle(e1, e2, f);
    double y = wood.yieldStrain();
    double flows = f[0] == 0 ? 0 : y;
    double d0 = Math.max(whole[0] - f[0], 1e-6 * whole[0]);
    double d1 = whole[1] - f[1];
    double d2 = whole[2] - f[2];
    double d11 = whole[3] - f[3];
    double d12 = whole[4] - f[4];
    double d22 = whole[5] - f[5];
    double moe = wood.moe();
    out.m1 = moe * (m * d2 + e1 * d22 - e2 * d12 - flows * f[2]);
    out.m2 = moe * (e2 * d11 - m * d1 - e1 * d12 + flows * f[1]);
    out.k11 = moe * (d22 - d2 * d2 / d0);
    out.k12 = moe * (d1 * d2 / d0 - d12);
    out.k22 = moe * (d11 - d1 * d1 / d0);
    double squares =
        m * m * (whole[0] - f[0])
            + 2 * m * (e1 * d2 - e2 * d1)
            + e1 * e1 * d22
            - 2 * e1 * e2 * d12
            + e2 * e2 * d11;
    double spent = flows * (m * f[0] + e1 * f[2] - e2 * f[1] + flows * f[0] / 2);
    out.m3 = torsion * e3;
    out.k33 = torsion;
    out.k13 = 0;
    out.k23 = 0;
    out.energy = moe * (squares / 2 - spent) + torsion * e3 * e3 / 2;
  }

  @Override
  public double[] strainUnder(double m1, double m2, double m3) {
    double[] bending = StrainSearch.under(this, m1, m2, BentDisc.farthest(wood, shape.radius()));
    return new double[] {bending[0], bending[1], m3 / torsion};
  }

  @Override
  public boolean canCarry(double m1, double m2) {
    return StrainSearch.carries(this, m1, m2, BentDisc.last(wood, shape.radius()));
  }

  @Override
  public double stiffnessAtRest() {
    return wood.moe() * polar() / 2;
  }

  @Override
  public FibreStrains fibres(double e1, double e2) {
    if (rim == null) {
      rim = new Rim(shape);
    }
    return rim.strains(middle(e1, e2, new double[CutOutline.SUMS]), e1, e2);
  }

  @Override
  public WoodSection after(double e1, double e2, double e3, Spell spell) {
    boolean strained = e1 != 0 || e2 != 0 || e3 != 0;
    boolean waits = spell.ring() > 0 || strained && !spell.isNothing();
    return waits || !isStraight(straightMiddle(e1, e2), Math.hypot(e1, e2))
        ? new FibreSection(wood, shape).after(e1, e2, e3, spell)
        : this;
  }

  @Override
  public WoodSection going(double[] from, double[] to, Spell spell) {
    return new FibreSection(wood, shape).going(from, to, spell);
  }

  @Override
  public WoodSection freed() {
    return this;
  }
}
