// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionLaw;

/** A section law that knows its fibres. */
public interface WoodSection extends SectionLaw {
  /**
   * Strains of the outermost fibres at a bending strain.
   *
   * @param e1 bending strain about axis 1 [rad/m]
   * @param e2 bending strain about axis 2 [rad/m]
   */
  FibreStrains fibres(double e1, double e2);

  /**
   * This section after it was brought to a bending strain and held there: its fibres keep what they
   * flowed at once, and what they crept while it was held.
   *
   * @param e1 bending strain about axis 1 [rad/m]
   * @param e2 bending strain about axis 2 [rad/m]
   * @param seconds how long it was held, 0 or more [s]
   */
  WoodSection after(double e1, double e2, double seconds);
}
