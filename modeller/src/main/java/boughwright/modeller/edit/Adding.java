// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Segment;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Puts a segment on another. */
final class Adding {
  private Adding() {}

  static void add(Draft draft, NewSegment wanted) throws InputException {
    SegmentDraft parent = draft.get(wanted.place().parent());
    String subject = "segment " + Refusal.quoted(wanted.id());
    double along = Refusal.fraction(subject, wanted.place().along());
    SegmentDraft segment =
        new SegmentDraft(
            new Segment(
                wanted.id(),
                Optional.of(parent.id),
                along,
                Optional.empty(),
                wanted.kind(),
                Optional.empty(),
                wanted.run().end(draft.point(parent, along), subject),
                Refusal.size(subject, "the start caliper", wanted.caliperStart()),
                Refusal.size(subject, "the end caliper", wanted.caliperEnd()),
                OptionalDouble.empty(),
                Optional.empty(),
                Features.NONE,
                Map.of()));
    join(draft, segment, wanted.place().joint());
    draft.insert(draft.after(parent), segment);
  }

  static void join(Draft draft, SegmentDraft segment, Joint joint) throws InputException {
    if (segment.parent.isEmpty()) {
      throw Refusal.of(
          segment.subject(),
          "base-joins-nothing",
          "it is the trunk base and joins nothing",
          "Choose a segment that grows on another");
    }
    if (joint == Joint.CONTINUES && segment.along < 1) {
      throw Refusal.of(
          segment.subject(),
          "continues-midway",
          "it starts before the end of its parent, so it cannot be the same shoot going on",
          "Start it at the parent's end, or let it join as a branch");
    }
    segment.joints(joint);
  }
}
