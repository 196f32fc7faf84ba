// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import boughwright.modeller.geometry.Vector3;
import boughwright.physics.rod.SectionResponse;
import boughwright.physics.wood.FibreStrains;
import boughwright.physics.wood.Spell;
import boughwright.physics.wood.StrainSearch;
import boughwright.physics.wood.WoodSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A section of a branch with coils on it: both are bent alike, and their moments add. Fibres are
 * those of the wood.
 *
 * @param wood the branch
 * @param coils what is wound on it
 */
public record CoiledSection(WoodSection wood, List<CoilLaw> coils) implements WoodSection {
  /** Bending farther than a radius of curvature of this stands for bending without end [1/m]. */
  private static final double FARTHEST = 1 / 1e-4;

  public CoiledSection {
    Objects.requireNonNull(wood, "wood");
    coils = List.copyOf(coils);
  }

  /** The same section with a part of its coils. */
  CoiledSection thinned(double part) {
    return new CoiledSection(wood, coils.stream().map(coil -> coil.times(part)).toList());
  }

  /** The same section, whose coils were wound on when the branch carried a moment. */
  CoiledSection woundUnder(Vector3 moment) {
    double[] at = wood.strainUnder(moment.x(), moment.y(), moment.z());
    return new CoiledSection(
        wood, coils.stream().map(coil -> coil.woundAt(at[0], at[1], at[2])).toList());
  }

  @Override
  public void respond(double e1, double e2, double e3, SectionResponse out) {
    wood.respond(e1, e2, e3, out);
    for (CoilLaw coil : coils) {
      coil.add(e1, e2, e3, out);
    }
  }

  @Override
  public double[] strainUnder(double m1, double m2, double m3) {
    double[] bending = StrainSearch.under(this, m1, m2, FARTHEST);
    SectionResponse response = new SectionResponse();
    respond(bending[0], bending[1], 0, response);
    return new double[] {bending[0], bending[1], (m3 - response.m3) / response.k33};
  }

  @Override
  public boolean canCarry(double m1, double m2) {
    double moment = Math.hypot(m1, m2);
    double coiled = coils.stream().mapToDouble(CoilLaw::most).sum();
    double left = moment <= coiled ? 0 : 1 - coiled / moment;
    return wood.canCarry(left * m1, left * m2);
  }

  @Override
  public double stiffnessAtRest() {
    return wood.stiffnessAtRest() + coils.stream().mapToDouble(CoilLaw::stiffness).sum();
  }

  @Override
  public FibreStrains fibres(double e1, double e2) {
    return wood.fibres(e1, e2);
  }

  /** Wire does not creep; the wood does. */
  @Override
  public WoodSection after(double e1, double e2, double e3, Spell spell) {
    List<CoilLaw> next = new ArrayList<>();
    coils.forEach(coil -> next.add(coil.after(e1, e2)));
    return new CoiledSection(wood.after(e1, e2, e3, spell), next);
  }

  @Override
  public WoodSection going(double[] from, double[] to, Spell spell) {
    List<CoilLaw> next = new ArrayList<>();
    coils.forEach(coil -> next.add(coil.after(from[0], from[1]).after(to[0], to[1])));
    return new CoiledSection(wood.going(from, to, spell), next);
  }

  @Override
  public WoodSection freed() {
    return new CoiledSection(wood.freed(), coils);
  }
}
