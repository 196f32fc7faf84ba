// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.LinearSection;
import boughwright.physics.rod.SectionResponse;

/** A round section of straight-line elastic wood. */
final class ElasticDisc implements WoodSection {
  private final LinearSection line;
  private final SegmentWood wood;
  private final double radius;

  ElasticDisc(SegmentWood wood, double radius) {
    this.wood = wood;
    line = LinearSection.round(wood.moe(), wood.shearModulus(), radius);
    this.radius = radius;
  }

  @Override
  public void respond(double e1, double e2, double e3, SectionResponse out) {
    line.respond(e1, e2, e3, out);
  }

  @Override
  public double[] strainUnder(double m1, double m2, double m3) {
    return line.strainUnder(m1, m2, m3);
  }

  @Override
  public double stiffnessAtRest() {
    return line.stiffnessAtRest();
  }

  @Override
  public FibreStrains fibres(double e1, double e2) {
    double strain = radius * Math.hypot(e1, e2);
    return new FibreStrains(strain, strain);
  }

  /** Straight-line wood neither flows nor creeps; only new wood round it changes it. */
  @Override
  public WoodSection after(double e1, double e2, double e3, Spell spell) {
    return spell.ring() == 0
        ? this
        : new FibreSection(wood, SectionShape.disc(radius)).after(e1, e2, e3, spell);
  }

  @Override
  public WoodSection going(double[] from, double[] to, Spell spell) {
    return after((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2, spell);
  }

  @Override
  public WoodSection freed() {
    return this;
  }
}
