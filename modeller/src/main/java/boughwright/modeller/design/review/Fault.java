// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import java.util.List;
import java.util.Objects;

/**
 * Something amiss in the structure.
 *
 * @param kind what
 * @param segments ids of the segments concerned, the one to act on first
 * @param where the place for its mark
 * @param measures what was measured, the measure that decides first
 * @param weight how much it matters beside others [1]: the caliper concerned over that of the trunk
 *     base, raised by how far over the limit it is, at most doubled (common practice, no source)
 * @param options what can be done about it
 */
public record Fault(
    FaultKind kind,
    List<String> segments,
    Where where,
    List<Measured> measures,
    double weight,
    List<Remedy> options) {
  public Fault {
    Objects.requireNonNull(kind, "kind");
    segments = List.copyOf(segments);
    Objects.requireNonNull(where, "where");
    measures = List.copyOf(measures);
    if (segments.isEmpty() || measures.isEmpty() || !(weight >= 0)) {
      throw new IllegalArgumentException(kind + " without place, measure or weight");
    }
    options = List.copyOf(options);
  }

  /** The measure that decides. */
  public Measured measure() {
    return measures.get(0);
  }
}
