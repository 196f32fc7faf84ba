// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How fast the tree thickens, as far as the person said.
 *
 * @param where what its roots grow in
 * @param ring new wood laid on all round in a year, one side, as measured on this tree [m]
 * @param extras fields of the file that this version does not know
 */
public record Growing(Optional<Where> where, OptionalDouble ring, Map<String, Object> extras) {
  /** Nothing is said. */
  public static final Growing UNSAID =
      new Growing(Optional.empty(), OptionalDouble.empty(), Map.of());

  /** What the roots grow in. */
  public enum Where {
    GROUND,
    /** A training box with free root run. */
    BOX,
    /** A shallow container. */
    POT
  }

  public Growing {
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(ring, "ring");
    if (ring.isPresent() && !(ring.getAsDouble() >= 0 && ring.getAsDouble() < 1)) {
      throw new IllegalArgumentException("a ring is 0 or more, not " + ring.getAsDouble());
    }
    extras = Extras.copyOf(extras);
  }
}
