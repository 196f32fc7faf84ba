// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import boughwright.modeller.plan.Coil;

/**
 * How wire lies round a branch: strands side by side, each a helix on the bark.
 *
 * <p>As helical springs (A. M. Wahl, Mechanical Springs; S. Timoshenko, Strength of Materials; from
 * memory, and derived in docs/theory/holding.md). The bark is taken to keep the wire in place and
 * not to bend it: friction and pressing make a real coil somewhat stiffer.
 *
 * @param gauge diameter of a strand [m]
 * @param strands strands side by side [1]
 * @param angle between wire and branch axis [rad]
 */
public record CoilShape(double gauge, int strands, double angle) {
  public CoilShape {
    if (!(gauge > 0) || strands < 1 || !(angle > 0 && angle < Math.PI / 2)) {
      throw new IllegalArgumentException("a coil has a gauge, a strand and a slant");
    }
  }

  /** The shape of a planned coil. */
  public static CoilShape of(Coil coil) {
    return new CoilShape(coil.gauge(), coil.strands(), coil.angleToAxis());
  }

  /** Advance along the branch in one turn [m]. */
  public double pitch(double branch) {
    return Math.PI * (branch + gauge) / Math.tan(angle);
  }

  /** Length of one strand in one turn [m]. */
  public double turn(double branch) {
    return Math.PI * (branch + gauge) / Math.sin(angle);
  }

  /** Length of one strand on a length of branch, whatever its thickness [m]. */
  public double along(double length) {
    return length / Math.cos(angle);
  }

  /**
   * Free bark between one turn and the next, along the branch; negative where they do not fit [m].
   *
   * @param branch diameter over bark [m]
   */
  public double gap(double branch) {
    return pitch(branch) - strands * gauge / Math.sin(angle);
  }

  /**
   * Surface strain of a straight wire that is wound on: d sin^2(angle) / (D + d), from the
   * curvature of a helix [1].
   *
   * @param branch diameter over bark [m]
   */
  public double windingStrain(double branch) {
    double sin = Math.sin(angle);
    return gauge * sin * sin / (branch + gauge);
  }

  /**
   * Bending stiffness per length of branch over that of the straight strands, 2 cos / (2 + nu
   * sin^2) [1].
   */
  public double bendingPart(double poisson) {
    double sin = Math.sin(angle);
    return 2 * Math.cos(angle) / (2 + poisson * sin * sin);
  }

  /**
   * Torsional stiffness about the branch axis, per length of branch, over the bending stiffness of
   * the straight strands: cos / (sin^2 + (1 + nu) cos^2) [1].
   */
  public double twistingPart(double poisson) {
    double sin = Math.sin(angle);
    double cos = Math.cos(angle);
    return cos / (sin * sin + (1 + poisson) * cos * cos);
  }
}
