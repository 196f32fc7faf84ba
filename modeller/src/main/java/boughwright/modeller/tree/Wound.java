// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A wound on the bark.
 *
 * @param id name within the tree
 * @param segment the segment it is on
 * @param along where along that segment, 0 to 1 [1]
 * @param round where round the segment at rest, clockwise looking from its start to its end, from
 *     its upper side [rad]
 * @param width size across the segment [m]
 * @param height size along the segment [m]
 * @param seenOn day it was measured
 * @param extras fields of the file that this version does not know
 */
public record Wound(
    String id,
    String segment,
    double along,
    double round,
    double width,
    double height,
    Optional<LocalDate> seenOn,
    Map<String, Object> extras) {
  public Wound {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(segment, "segment");
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along is " + along + ", 0 to 1 is expected");
    }
    if (!Double.isFinite(round)) {
      throw new IllegalArgumentException("round is " + round);
    }
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a wound has a size, not " + width + " by " + height);
    }
    extras = Extras.copyOf(extras);
  }
}
