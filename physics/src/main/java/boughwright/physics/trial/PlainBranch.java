// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One straight, level branch, held at its start.
 *
 * @param length from where it is held to its tip [m]
 * @param caliperStart diameter over bark where it is held [m]
 * @param caliperEnd diameter over bark at the tip [m]
 * @param bark thickness of one layer of bark [m]
 * @param moe modulus of elasticity of this very branch; empty for the species' [Pa]
 * @param caliperError nine readings in ten lie within this of the truth; empty for the default [m]
 */
public record PlainBranch(
    double length,
    double caliperStart,
    double caliperEnd,
    double bark,
    OptionalDouble moe,
    OptionalDouble caliperError) {
  private static final double DEEPEST = 0.9;

  public PlainBranch {
    if (!(length > 0) || !(bark >= 0) || !(Math.min(caliperStart, caliperEnd) > 2 * bark)) {
      throw new IllegalArgumentException("a branch has a length and wood under its bark");
    }
    Objects.requireNonNull(moe, "moe");
    Objects.requireNonNull(caliperError, "caliperError");
  }

  /** A branch read with the usual error. */
  public PlainBranch(
      double length, double caliperStart, double caliperEnd, double bark, OptionalDouble moe) {
    this(length, caliperStart, caliperEnd, bark, moe, OptionalDouble.empty());
  }

  /**
   * How far its tip can come down at most in a {@link TipPull}: the whole length is reached by no
   * force at all [m].
   */
  public double deepestTip() {
    return DEEPEST * length;
  }
}
