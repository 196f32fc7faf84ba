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

  /**
   * A round section: EI = E pi r^4 / 4, GJ = G pi r^4 / 2 (Gere and Timoshenko, Mechanics of
   * Materials, appendix on plane areas; from memory).
   *
   * @param moe modulus of elasticity E [Pa]
   * @param shearModulus modulus of rigidity G [Pa]
   * @param radius radius [m]
   */
  public static LinearSection round(double moe, double shearModulus, double radius) {
    double squared = radius * radius;
    double quarter = Math.PI / 4 * squared * squared;
    return new LinearSection(moe * quarter, moe * quarter, shearModulus * 2 * quarter);
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

  @Override
  public double stiffnessAtRest() {
    return bending1;
  }
}
