// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Who sits on whom: all of a segment that the shape rules need.
 *
 * @param id id of the segment
 * @param parent id of the segment it starts on; empty for the trunk base
 */
public record Link(String id, Optional<String> parent) {
  public Link {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(parent, "parent");
  }

  /** The links of segments, in the same order. */
  public static List<Link> of(List<Segment> segments) {
    return segments.stream().map(segment -> new Link(segment.id(), segment.parent())).toList();
  }
}
