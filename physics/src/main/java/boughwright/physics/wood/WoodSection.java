// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionLaw;

/** A section law that knows its fibres. */
public interface WoodSection extends SectionLaw {
  /**
   * Strains of the outermost fibres at a bending strain, counted from the wood as it grew: what
   * creep has let go of is still strain.
   *
   * @param e1 bending strain about axis 1 [rad/m]
   * @param e2 bending strain about axis 2 [rad/m]
   */
  FibreStrains fibres(double e1, double e2);

  /**
   * This section after it was brought to a strain and held there: its fibres keep what they flowed
   * at once, what they crept while it was held, and new wood lies round them.
   *
   * @param e1 bending strain about axis 1 [rad/m]
   * @param e2 bending strain about axis 2 [rad/m]
   * @param e3 twist [rad/m]
   * @param spell how long it was held, and what passed meanwhile
   */
  WoodSection after(double e1, double e2, double e3, Spell spell);

  /**
   * This section after it was brought to a strain and went from there to another, evenly in time.
   *
   * @param from bending strains about axes 1 and 2 and twist at first, shape (3) [rad/m]
   * @param to the same in the end
   * @param spell how long that took, and what passed meanwhile
   */
  WoodSection going(double[] from, double[] to, Spell spell);

  /** This section after it was brought to a bending strain for a moment. */
  default WoodSection bentTo(double e1, double e2) {
    return after(e1, e2, 0, Spell.NONE);
  }

  /**
   * This section for finding where it comes to rest when nothing holds it for long: all that creeps
   * back has crept back. Only its rest is true; it no longer flows.
   */
  WoodSection freed();
}
