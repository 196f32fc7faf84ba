// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * A section whose moments are proportional to its strains.
 *
 * @param bending1 bending stiffness about axis 1 [N m2]
 * @param bending2 bending stiffness about axis 2 [N m2]
 * @param torsion torsional stiffness [N m2]
 */
public record LinearSection(double bending1, double bending2, double torsion)
    implements SectionLaw {
  public LinearSection {
    if (!(bending1 > 0 && bending2 > 0 && torsion > 0)) {
      throw new IllegalArgumentException(
          "stiffnesses are positive, not " + bending1 + ", " + bending2 + ", " + torsion);
    }
  }

  @Override
  public void respond(double e1, double e2, double e3, SectionResponse out) {
    out.m1 = bending1 * e1;
    out.m2 = bending2 * e2;
    out.m3 = torsion * e3;
    out.energy = 0.5 * (out.m1 * e1 + out.m2 * e2 + out.m3 * e3);
    out.k11 = bending1;
    out.k22 = bending2;
    out.k33 = torsion;
    out.k12 = 0;
    out.k13 = 0;
    out.k23 = 0;
  }

  @Override
  public double[] strainUnder(double m1, double m2, double m3) {
    return new double[] {m1 / bending1, m2 / bending2, m3 / torsion};
  }
}
