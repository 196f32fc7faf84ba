// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/** The answer of a {@link SectionLaw}; a workspace that is written over. */
public final class SectionResponse {
  /** Stored energy per length [J/m]. */
  public double energy;

  /** Moments about the section's axes [N m]. */
  public double m1;

  public double m2;
  public double m3;

  /** Tangent, the symmetric matrix of moment over strain [N m2]. */
  public double k11;

  public double k22;
  public double k33;
  public double k12;
  public double k13;
  public double k23;

  boolean isRound() {
    return k12 == 0 && k13 == 0 && k23 == 0 && k11 == k22;
  }
}
