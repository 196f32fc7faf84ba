// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static boughwright.modeller.edit.Draft.edit;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Changes of one segment. What grows on it rides along unless something else is said; every other
 * point of the tree stays where it is, and every segment joins its parent as before.
 */
public final class SegmentEdits {
  private SegmentEdits() {}

  /** What happens to the wood that grows on a segment when its end moves. */
  public enum Carry {
    /** It moves along without turning. */
    WITH,
    /** Its ends stay where they are; only where it starts follows. */
    STAYS
  }

  /** Adds a segment on another. */
  public static Edit add(NewSegment segment) {
    return edit("Add " + segment.id(), draft -> Adding.add(draft, segment));
  }

  /**
   * Makes two segments of one; everything on it stays at its place on the wood.
   *
   * @param along where, above 0 and below 1 [1]
   * @param newId name of the outer half ({@link NextId#segment})
   */
  public static Edit split(String id, double along, String newId) {
    return edit("Split " + id, draft -> new Splitting(draft, draft.get(id), along).into(newId));
  }

  /** Moves the end of a segment to a point or to where a heading leads. */
  public static Edit moveEnd(String id, Run run, Carry carry) {
    return edit("Move the end of " + id, draft -> moveEnd(draft, draft.get(id), run, carry));
  }

  static void moveEnd(Draft draft, SegmentDraft segment, Run run, Carry carry)
      throws InputException {
    Point3 end = run.end(draft.start(segment), segment.subject());
    Vector3 step = end.minus(segment.end);
    if (carry == Carry.WITH) {
      for (SegmentDraft child : draft.children(segment)) {
        draft.shift(child, step.times(child.along));
      }
    }
    segment.end = end;
  }

  /**
   * Sets the diameters over bark.
   *
   * @param start at its start, just outside the collar [m]
   * @param end at its end [m]
   */
  public static Edit setCalipers(String id, double start, double end) {
    return edit(
        "Set the calipers of " + id,
        draft -> {
          SegmentDraft segment = draft.get(id);
          segment.caliperStart = Refusal.size(segment.subject(), "the start caliper", start);
          segment.caliperEnd = Refusal.size(segment.subject(), "the end caliper", end);
        });
  }

  /** Says what a segment is; it joins its parent as before. */
  public static Edit setKind(String id, Kind kind) {
    return edit(
        "Make " + id + " " + (kind == Kind.ROOT || kind == Kind.TRUNK ? "" : "a ") + words(kind),
        draft -> draft.get(id).kind = kind);
  }

  private static String words(Kind kind) {
    return switch (kind) {
      case TRUNK -> "trunk";
      case BRANCH -> "branch";
      case ROOT -> "root";
      case SACRIFICE -> "sacrifice branch";
      case DEADWOOD -> "piece of deadwood";
    };
  }

  /** Sets the thickness of one layer of its bark; empty for the tree's [m]. */
  public static Edit setBark(String id, OptionalDouble bark) {
    return edit(
        "Set the bark of " + id,
        draft -> {
          SegmentDraft segment = draft.get(id);
          if (bark.isPresent()) {
            Refusal.sizeOrNone(segment.subject(), "the bark", bark.getAsDouble());
          }
          segment.bark = bark;
        });
  }

  /** Says whether it carries live growth; empty for not said. */
  public static Edit setLive(String id, Optional<Boolean> live) {
    return edit("Set the growth of " + id, draft -> draft.get(id).live = live);
  }

  /** Says whether the same shoot goes on or a branch joins. */
  public static Edit setJoint(String id, Joint joint) {
    return edit("Set how " + id + " joins", draft -> Adding.join(draft, draft.get(id), joint));
  }

  /** Sets what makes its wood weaker. */
  public static Edit setFeatures(String id, Features features) {
    return edit("Set the weak spots of " + id, draft -> draft.get(id).features = features);
  }

  /** Gives it another name; everything that refers to it follows. */
  public static Edit rename(String id, String newId) {
    return edit(
        "Rename " + id + " to " + newId,
        draft -> Renaming.rename(draft, id.equals(newId) ? Map.of() : Map.of(id, newId)));
  }
}
