// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person ticks on a segment because it makes the wood weaker.
 *
 * @param hollow diameter of a hollow in the middle; empty for none [m]
 * @param deadFace a dead or stripped side
 * @param slot a groove cut along it
 * @param knots how many knots and stubs there are; empty when the person did not say
 * @param grain how the grain runs; empty when the person did not say
 * @param includedBark whether bark is caught in the crotch where the segment joins its parent
 */
public record Features(
    OptionalDouble hollow,
    Optional<DeadFace> deadFace,
    Optional<Slot> slot,
    Optional<Knots> knots,
    Optional<Grain> grain,
    boolean includedBark) {
  /** Nothing was ticked. */
  public static final Features NONE =
      new Features(
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          false);

  public Features {
    if (hollow.isPresent() && !(hollow.getAsDouble() > 0)) {
      throw new IllegalArgumentException("a hollow has a width, not " + hollow.getAsDouble());
    }
    Objects.requireNonNull(deadFace, "deadFace");
    Objects.requireNonNull(slot, "slot");
    Objects.requireNonNull(knots, "knots");
    Objects.requireNonNull(grain, "grain");
  }

  /** True if the wood is one round disc. */
  public boolean isWhole() {
    return hollow.isEmpty() && deadFace.isEmpty() && slot.isEmpty();
  }
}
