// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A segment that is about to be added.
 *
 * @param seat where it starts
 * @param course where it points and how long it is
 * @param calipers its calipers
 * @param kind what it is
 */
public record Draft(Seat seat, Polar course, CaliperGuess calipers, Kind kind) {
  public Draft {
    Objects.requireNonNull(seat, "seat");
    Objects.requireNonNull(course, "course");
    Objects.requireNonNull(calipers, "calipers");
    Objects.requireNonNull(kind, "kind");
  }

  /** What a segment drawn from a seat most likely is. */
  public static Draft likely(Skeleton skeleton, Seat seat, Polar course) {
    return new Draft(
        seat,
        course,
        CaliperGuess.of(skeleton, seat, course.length()),
        seat.kind(skeleton, course.elevation()));
  }

  /** The segment under a name. */
  public Segment segment(Skeleton skeleton, String id) {
    return new Segment(
        id,
        Optional.of(skeleton.segment(seat.parent()).id()),
        seat.along(),
        Optional.of(seat.joins()),
        kind,
        Optional.empty(),
        course.from(seat.point(skeleton)),
        calipers.start(),
        calipers.end(),
        OptionalDouble.empty(),
        Optional.empty(),
        Map.of());
  }

  public boolean continues() {
    return seat.joins() == Joint.CONTINUES;
  }
}
