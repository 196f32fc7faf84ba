// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionResponse;

/**
 * A section of any shape, fibre by fibre, that remembers what it went through ({@link
 * FibreMemory}).
 *
 * <p>A fibre flows in compression only. By its strain beyond rest: shorter than ever it flows on as
 * if fresh, else it answers along a straight line from the length to which it was crushed. So flow
 * follows the stress there is, whatever creep has let go of. Where flow begins the corner is
 * rounded a little, so that the tangent is smooth. Within one move the law has a potential.
 */
final class FibreSection implements WoodSection {
  /** Half the width of the rounded corner over the strain at which flow begins [1]. */
  private static final double ROUNDED = 0.1;

  private static final int MOST_STEPS = 60;

  private final SegmentWood wood;
  private final SectionShape shape;
  private final FibreGrid grid;
  private final Rim rim;
  private final Grown grown;
  private final double area;
  private final FibreMemory memory;
  private final Creep creep;
  private final StraightSums straight;

  /** What each fibre has been shortened for good, shape (fibres) [1]. */
  private final double[] flowed;

  /**
   * How thick the section has become.
   *
   * @param radius radius with all rings [m]
   * @param torsion torsional stiffness with all rings [N m2]
   */
  private record Grown(double radius, double torsion) {}

  FibreSection(SegmentWood wood, SectionShape shape) {
    this(wood, shape, FibreGrid.of(shape));
  }

  /** A whole disc that is to be carried through time. */
  static FibreSection aging(SegmentWood wood, double radius) {
    return new FibreSection(wood, SectionShape.disc(radius), FibreGrid.disc(radius));
  }

  private FibreSection(SegmentWood wood, SectionShape shape, FibreGrid grid) {
    this.wood = wood;
    this.shape = shape;
    this.grid = grid;
    rim = new Rim(shape);
    grown =
        new Grown(
            shape.radius(),
            wood.shearModulus() * TorsionConstant.of(shape, grid.sum(), grid.polar()));
    area = grid.sum();
    memory = FibreMemory.none(grid.count);
    creep = Creep.NONE;
    flowed = flowed();
    straight = straight();
  }

  private FibreSection(FibreSection before, FibreMemory memory, Creep creep) {
    this(before, before.grid, before.grown, memory, creep);
  }

  private FibreSection(
      FibreSection before, FibreGrid grid, Grown grown, FibreMemory memory, Creep creep) {
    wood = before.wood;
    shape = before.shape;
    rim = before.rim;
    this.grid = grid;
    this.grown = grown;
    area = grid.sum();
    this.memory = memory;
    this.creep = creep;
    flowed = flowed();
    straight = straight();
  }

  private double[] flowed() {
    double[] shorter = new double[grid.count];
    for (int i = 0; i < grid.count; i++) {
      shorter[i] = grid.flows[i] ? flow(-memory.shortest[i]) : 0;
    }
    return shorter;
  }

  private StraightSums straight() {
    double[] work = new double[grid.count];
    for (int i = 0; i < grid.count; i++) {
      double turn = memory.shortest[i];
      work[i] = grid.flows[i] ? -flowed[i] * turn - flowWork(-turn) : 0;
    }
    return new StraightSums(grid, memory.rest, flowed, work);
  }

  /** Whether no fibre flows on at a strain. */
  private boolean isStraight(double middle, double e1, double e2) {
    if (wood.isElastic() || memory.freed) {
      return true;
    }
    double first = -(1 - ROUNDED) * wood.yieldStrain();
    for (int i = 0; i < grid.count; i++) {
      double strain = middle + e1 * grid.p2[i] - e2 * grid.p1[i] - memory.rest[i];
      if (strain < first && strain < memory.shortest[i] && grid.flows[i]) {
        return false;
      }
    }
    return true;
  }

  @Override
  public FibreSection after(double e1, double e2, double e3, Spell spell) {
    double[] at = {e1, e2, e3};
    return going(at, at, spell);
  }

  /** New wood is laid half-way. */
  @Override
  public FibreSection going(double[] from, double[] to, Spell spell) {
    boolean creeps = spell.seconds() > 0 && !spell.creep().isNone() && !wood.isElastic();
    FibreSection held;
    double[] shortest = memory.shortest.clone();
    double[] start = strains(from, shortest);
    if (creeps) {
      CreepClock clock = new CreepClock(spell.creep(), spell.seconds());
      double[] end = from == to ? start : strains(to, shortest);
      held = new FibreSection(this, memory.after(shortest, start, end, clock), spell.creep());
    } else {
      held = new FibreSection(this, memory.shorter(shortest), creep);
    }
    return spell.ring() > 0
        ? held.withRing((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2, spell)
        : held;
  }

  /**
   * Strains of the fibres beyond what they flowed, and the twist, shape (fibres + 1).
   *
   * @param bent bending strains and twist
   * @param shortest is lowered where a fibre is shorter than ever
   */
  private double[] strains(double[] bent, double[] shortest) {
    double middle = middle(bent[0], bent[1]);
    double[] strain = new double[grid.count + 1];
    for (int i = 0; i < grid.count; i++) {
      double total = middle + bent[0] * grid.p2[i] - bent[1] * grid.p1[i];
      shortest[i] = Math.min(shortest[i], total - memory.rest[i]);
      strain[i] = grid.flows[i] ? total + flow(-shortest[i]) : total;
    }
    strain[grid.count] = bent[2];
    return strain;
  }

  private FibreSection withRing(double e1, double e2, double e3, Spell spell) {
    double from = grown.radius();
    double to = from + spell.ring();
    FibreGrid more = grid.withRing(shape, from, spell.ring(), spell.ringStiffness());
    double middle = middle(e1, e2);
    double[] laid = new double[more.count - grid.count];
    for (int i = 0; i < laid.length; i++) {
      int k = grid.count + i;
      laid[i] = middle + e1 * more.p2[k] - e2 * more.p1[k];
    }
    double tube = Math.PI / 2 * (Math.pow(to, 4) - Math.pow(from, 4));
    double torsion = grown.torsion() + spell.ringStiffness() * wood.shearModulus() * tube;
    return new FibreSection(
        this,
        more,
        new Grown(to, torsion),
        memory.with(laid, e3, grown.torsion() / torsion),
        creep);
  }

  @Override
  public WoodSection freed() {
    return new FibreSection(this, memory.freed(new CreepClock(creep, 0)), creep);
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

  /** Stress over E at a strain beyond rest [1]. */
  private double stress(int i, double strain) {
    return strain < memory.shortest[i] && grid.flows[i]
        ? strain + flow(-strain)
        : strain + flowed[i];
  }

  /** Rate of stress over strain, over E [1]. */
  private double slope(int i, double strain) {
    return grid.flows[i] && strain < memory.shortest[i] ? 1 - flowSlope(-strain) : 1;
  }

  private double work(int i, double strain) {
    double elastic = strain * strain / 2;
    if (!grid.flows[i]) {
      return elastic;
    }
    double turn = Math.min(strain, memory.shortest[i]);
    return elastic + flow(-turn) * (strain - turn) - flowWork(-turn);
  }

  /**
   * The strain of the axis at which there is no net axial force [1]. Force over that strain is
   * convex and rises, so Newton's method comes down to it from above.
   */
  double middle(double e1, double e2) {
    double middle = straight.middle(e1, e2);
    if (isStraight(middle, e1, e2)) {
      return middle;
    }
    middle = Math.max(0, middle);
    double scale = shape.radius() * Math.sqrt(e1 * e1 + e2 * e2) + 1e-12;
    for (int n = 0; n < MOST_STEPS; n++) {
      double force = 0;
      double slope = 0;
      for (int i = 0; i < grid.count; i++) {
        double strain = middle + e1 * grid.p2[i] - e2 * grid.p1[i] - memory.rest[i];
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
    double middle = straight.middle(e1, e2);
    respondTorsion(e3, out);
    if (isStraight(middle, e1, e2)) {
      straight.respond(wood.moe(), e1, e2, out);
      out.energy += grown.torsion() * (e3 / 2 - memory.rest[grid.count]) * e3;
      return;
    }
    middle = middle(e1, e2);
    double[] sums = new double[9];
    for (int i = 0; i < grid.count; i++) {
      double g1 = grid.p2[i];
      double g2 = -grid.p1[i];
      double strain = middle + e1 * g1 + e2 * g2 - memory.rest[i];
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
    out.k11 = moe * (sums[5] - sums[3] * sums[3] / spread);
    out.k12 = moe * (sums[6] - sums[3] * sums[4] / spread);
    out.k22 = moe * (sums[7] - sums[4] * sums[4] / spread);
    out.energy = moe * sums[8] + grown.torsion() * (e3 / 2 - memory.rest[grid.count]) * e3;
  }

  private void respondTorsion(double e3, SectionResponse out) {
    out.m3 = grown.torsion() * (e3 - memory.rest[grid.count]);
    out.k33 = grown.torsion();
    out.k13 = 0;
    out.k23 = 0;
  }

  @Override
  public double[] strainUnder(double m1, double m2, double m3) {
    double[] bending = StrainSearch.under(this, m1, m2, BentDisc.farthest(wood, shape.radius()));
    double twist = memory.rest[grid.count] + m3 / grown.torsion();
    return new double[] {bending[0], bending[1], twist};
  }

  @Override
  public boolean canCarry(double m1, double m2) {
    return StrainSearch.carries(this, m1, m2, BentDisc.last(wood, shape.radius()));
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
