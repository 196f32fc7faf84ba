// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import java.util.Objects;

/**
 * A place on the tree.
 *
 * @param segment segment id
 * @param along fraction of the segment's length from its start, 0 to 1 [1]
 */
public record Spot(String segment, double along) {
  public Spot {
    Objects.requireNonNull(segment, "segment");
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along is " + along + ", 0 to 1 is expected");
    }
  }
}
