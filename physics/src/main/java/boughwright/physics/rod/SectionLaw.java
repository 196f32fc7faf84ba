// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * How one cross-section answers being bent and twisted.
 *
 * <p>Strains are the rates of turning per length in excess of the rest shape, about the section's
 * own axes 1, 2 (across) and 3 (along) [rad/m]; moments are their work conjugates [N m].
 */
public interface SectionLaw {
  /**
   * Moments, tangent and stored energy at a strain.
   *
   * @param e1 bending strain about axis 1 [rad/m]
   * @param e2 bending strain about axis 2 [rad/m]
   * @param e3 twist [rad/m]
   * @param out receives the answer
   */
  void respond(double e1, double e2, double e3, SectionResponse out);

  /**
   * The strain under which the section carries a moment; a very large one, never without end, where
   * it cannot.
   *
   * @param m1 moment about axis 1 [N m]
   * @param m2 moment about axis 2 [N m]
   * @param m3 torsional moment [N m]
   * @return three strains [rad/m]
   */
  double[] strainUnder(double m1, double m2, double m3);

  /**
   * Whether the section carries a bending moment at a strain it can be brought to.
   *
   * @param m1 moment about axis 1 [N m]
   * @param m2 moment about axis 2 [N m]
   */
  default boolean canCarry(double m1, double m2) {
    return true;
  }

  /** Bending stiffness where nothing is bent, a typical one of both axes [N m2]. */
  double stiffnessAtRest();
}
