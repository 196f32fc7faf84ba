// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.edit.NewSegment;
import boughwright.modeller.edit.NextId;
import boughwright.modeller.edit.Run;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.Objects;

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
  public NewSegment segment(Skeleton skeleton, String id) {
    return new NewSegment(
        id,
        new NewSegment.Place(seat.id(skeleton), seat.along(), seat.joins()),
        kind,
        new Run.To(course.from(seat.point(skeleton))),
        calipers.start(),
        calipers.end());
  }

  /** A name for it that goes on with the names of the tree. */
  public String freeId(Document document, Skeleton skeleton) {
    try {
      return NextId.segment(document, seat.id(skeleton), kind, seat.joins());
    } catch (InputException e) {
      throw new IllegalStateException("the seat is on a segment of the tree", e);
    }
  }

  public boolean continues() {
    return seat.joins() == Joint.CONTINUES;
  }
}
