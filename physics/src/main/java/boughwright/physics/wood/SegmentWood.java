// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.Objects;

/**
 * The wood of one segment as one trial takes it: the best guess, or one draw.
 *
 * @param moe modulus of elasticity E along the grain, under bark [Pa]
 * @param shearModulus modulus of rigidity G along the grain [Pa]
 * @param yieldStrain crushing stress over E, at which fibres begin to flow when compressed;
 *     infinite for straight-line elastic wood [1]
 * @param basis where the modulus comes from, in words
 */
public record SegmentWood(double moe, double shearModulus, double yieldStrain, String basis) {
  public SegmentWood {
    if (!(moe > 0 && shearModulus > 0) || Double.isInfinite(moe + shearModulus)) {
      throw new IllegalArgumentException("moduli are positive, not " + moe + ", " + shearModulus);
    }
    if (!(yieldStrain > 0)) {
      throw new IllegalArgumentException("a yield strain is positive, not " + yieldStrain);
    }
    Objects.requireNonNull(basis, "basis");
  }

  /** True if the wood answers along a straight line without end. */
  public boolean isElastic() {
    return Double.isInfinite(yieldStrain);
  }
}
