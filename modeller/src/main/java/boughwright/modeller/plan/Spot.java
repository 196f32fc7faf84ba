// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;
import java.util.Objects;

/**
 * A place on the tree.
 *
 * @param segment segment id
 * @param along fraction of the segment's length from its start, 0 to 1 [1]
 * @param extras fields of the file that this version does not know
 */
public record Spot(String segment, double along, Map<String, Object> extras) {
  public Spot {
    Objects.requireNonNull(segment, "segment");
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along is " + along + ", 0 to 1 is expected");
    }
    extras = Extras.copyOf(extras);
  }

  public Spot(String segment, double along) {
    this(segment, along, Map.of());
  }
}
