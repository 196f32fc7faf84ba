// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionResponse;

/**
 * A section of any shape, fibre by fibre, that remembers what it went through.
 *
 * <p>A fibre flows in compression only, so all that it remembers is the strain at which it was
 * shortest: shorter still it flows on as if fresh, else it answers along a straight line from the
 * length to which it was crushed. Where flow begins the corner is rounded a little, so that the
 * tangent is smooth. Within one move the law has a potential.
 */
final class FibreSection implements WoodSection {
  /** Half the width of the rounded corner over the strain at which flow begins [1]. */
  private static final double ROUNDED = 0.1;

  private static final int MOST_STEPS = 60;

  private final SegmentWood wood;
  private final SectionShape shape;
  private final FibreGrid grid;
  private final Rim rim;
  private final double torsion;
  private final double area;

  /** Strain at which each fibre was shortest, at most 0 [1]; null for a fresh section. */
  private final double[] shortest;

  FibreSection(SegmentWood wood, SectionShape shape) {
    this.wood = wood;
    this.shape = shape;
    grid = FibreGrid.of(shape);
    rim = new Rim(shape);
    torsion = wood.shearModulus() * TorsionConstant.of(shape, grid);
    area = grid.sum();
    shortest = null;
  }

  private FibreSection(FibreSection before, double[] shortest) {
    wood = before.wood;
    shape = before.shape;
    grid = before.grid;
    rim = before.rim;
    torsion = before.torsion;
    area = before.area;
    this.shortest = shortest;
  }

  @Override
  public FibreSection after(double e1, double e2, double seconds) {
    double middle = middle(e1, e2);
    double[] now = shortest == null ? new double[grid.count] : shortest.clone();
    for (int i = 0; i < grid.count; i++) {
      now[i] = Math.min(now[i], middle + e1 * grid.p2[i] - e2 * grid.p1[i]);
    }
    return new FibreSection(this, now);
  }

  /** How much shorter a fibre of a compressive strain has been made for good [1]. */
  private double flow(double compressed) {
    double over = compressed - wood.yieldStrain();
    double corner = ROUNDED * wood.yieldStrain();
    if (over <= -corner || Double.isInfinite(corner)) {
      return 0;
    }
    double rise = over + corner;
    return over < corner ? rise * rise / (4 * corner) : over;
  }

  /** Integral of {@link #flow} over the compressive strain. */
  private double flowWork(double compressed) {
    double over = compressed - wood.yieldStrain();
    double corner = ROUNDED * wood.yieldStrain();
    if (over <= -corner || Double.isInfinite(corner)) {
      return 0;
    }
    double rise = over + corner;
    return over < corner
        ? rise * rise * rise / (12 * corner)
        : over * over / 2 + corner * corner / 6;
  }

  private double flowSlope(double compressed) {
    double over = compressed - wood.yieldStrain();
    double corner = ROUNDED * wood.yieldStrain();
    if (over <= -corner || Double.isInfinite(corner)) {
      return 0;
    }
    return over < corner ? (over + corner) / (2 * corner) : 1;
  }

  private double least(int i) {
    return shortest == null ? 0 : shortest[i];
  }

  /** Stress over E [1]. */
  private double stress(int i, double strain) {
    return grid.flows[i] ? strain + flow(-Math.min(strain, least(i))) : strain;
  }

  /** Rate of stress over strain, over E [1]. */
  private double slope(int i, double strain) {
    return grid.flows[i] && strain < least(i) ? 1 - flowSlope(-strain) : 1;
  }

  private double work(int i, double strain) {
    double elastic = strain * strain / 2;
    if (!grid.flows[i]) {
      return elastic;
    }
    double turn = Math.min(strain, least(i));
    return elastic + flow(-turn) * (strain - turn) - flowWork(-turn);
  }

  /**
   * The strain of the axis at which there is no net axial force [1]. Force over that strain is
   * convex and rises, so Newton's method comes down to it from above.
   */
  double middle(double e1, double e2) {
    double middle = 0;
    double scale = shape.radius() * Math.hypot(e1, e2) + 1e-12;
    for (int n = 0; n < MOST_STEPS; n++) {
      double force = 0;
      double slope = 0;
      for (int i = 0; i < grid.count; i++) {
        double strain = middle + e1 * grid.p2[i] - e2 * grid.p1[i];
        force += grid.area[i] * stress(i, strain);
        slope += grid.area[i] * slope(i, strain);
      }
      double step = force / Math.max(slope, 1e-6 * area);
      middle -= step;
      if (Math.abs(step) < 1e-13 * scale) {
        break;
      }
    }
    return middle;
  }

  @Override
  public void respond(double e1, double e2, double e3, SectionResponse out) {
    double middle = middle(e1, e2);
    double[] sums = new double[9];
    for (int i = 0; i < grid.count; i++) {
      double g1 = grid.p2[i];
      double g2 = -grid.p1[i];
      double strain = middle + e1 * g1 + e2 * g2;
      double pull = grid.area[i] * stress(i, strain);
      double rate = grid.area[i] * slope(i, strain);
      sums[0] += pull * g1;
      sums[1] += pull * g2;
      sums[2] += rate;
      sums[3] += rate * g1;
      sums[4] += rate * g2;
      sums[5] += rate * g1 * g1;
      sums[6] += rate * g1 * g2;
      sums[7] += rate * g2 * g2;
      sums[8] += grid.area[i] * work(i, strain);
    }
    double moe = wood.moe();
    double spread = Math.max(sums[2], 1e-6 * area);
    out.m1 = moe * sums[0];
    out.m2 = moe * sums[1];
    out.m3 = torsion * e3;
    out.k11 = moe * (sums[5] - sums[3] * sums[3] / spread);
    out.k12 = moe * (sums[6] - sums[3] * sums[4] / spread);
    out.k22 = moe * (sums[7] - sums[4] * sums[4] / spread);
    out.k33 = torsion;
    out.k13 = 0;
    out.k23 = 0;
    out.energy = moe * sums[8] + 0.5 * out.m3 * e3;
  }

  @Override
  public double[] strainUnder(double m1, double m2, double m3) {
    double[] bending = StrainSearch.under(this, m1, m2, farthest());
    return new double[] {bending[0], bending[1], m3 / torsion};
  }

  @Override
  public boolean canCarry(double m1, double m2) {
    double[] e = StrainSearch.under(this, m1, m2, farthest());
    return Math.hypot(e[0], e[1]) < farthest();
  }

  private double farthest() {
    return wood.isElastic()
        ? Double.POSITIVE_INFINITY
        : BentDisc.FARTHEST * wood.yieldStrain() / shape.radius();
  }

  @Override
  public double stiffnessAtRest() {
    return wood.moe() * grid.polar() / 2;
  }

  @Override
  public FibreStrains fibres(double e1, double e2) {
    return rim.strains(middle(e1, e2), e1, e2);
  }
}
