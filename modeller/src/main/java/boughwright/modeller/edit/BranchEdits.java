// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static boughwright.modeller.edit.Draft.edit;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Changes of a segment together with all that grows on it. */
public final class BranchEdits {
  private static final int MOST_NAMED = 3;

  private BranchEdits() {}

  /**
   * Takes segments out with all that grows on them, and everything that refers to what is gone.
   *
   * @param now the document it is to be made in, for the words of its name
   * @throws InputException if one is not there or is the trunk base
   */
  public static Edit delete(Document now, Collection<String> ids) throws InputException {
    List<String> named = List.copyOf(new LinkedHashSet<>(ids));
    String[] gone = new String[1];
    edit(
            "",
            draft -> {
              Pruning.prune(draft, named);
              gone[0] = Parts.gone(draft);
            })
        .of(now);
    String what = named.size() > MOST_NAMED ? named.size() + " segments" : String.join(", ", named);
    return edit(
        "Delete "
            + what
            + " and what hangs on "
            + (named.size() == 1 ? "it: " : "them: ")
            + gone[0],
        draft -> Pruning.prune(draft, named));
  }

  /** {@link #delete(Document, Collection)} of one segment. */
  public static Edit delete(Document now, String id) throws InputException {
    return delete(now, List.of(id));
  }

  /**
   * Moves a branch to another place, without turning it.
   *
   * @param parent the segment it is to start on, which may be the one it starts on now
   * @param along where on that segment's axis, 0 to 1 [1]
   */
  public static Edit move(String id, String parent, double along) {
    return edit("Move branch " + id, draft -> move(draft, draft.get(id), parent, along));
  }

  static void move(Draft draft, SegmentDraft base, String parentId, double along)
      throws InputException {
    if (base.parent.isEmpty()) {
      throw Refusal.of(
          base.subject(),
          "base-moves",
          "it is the trunk base, which grows on nothing",
          "Choose a segment that grows on another");
    }
    SegmentDraft parent = draft.get(parentId);
    if (draft.branch(base).contains(parent)) {
      throw Refusal.of(
          base.subject(),
          "ring",
          Refusal.quoted(parentId)
              + " grows on it, so it cannot grow on "
              + Refusal.quoted(parentId),
          "Choose a segment that does not grow on this one");
    }
    Vector3 step =
        draft.point(parent, Refusal.fraction(base.subject(), along)).minus(draft.start(base));
    boolean stays = base.parent.get().equals(parentId) && base.along == along;
    if (!stays) {
      boolean goesOn =
          base.joint == Joint.CONTINUES
              && along == 1
              && draft.children(parent).stream()
                  .noneMatch(one -> one != base && one.joint == Joint.CONTINUES);
      base.joints(goesOn ? Joint.CONTINUES : Joint.UNION);
    }
    draft.shift(base, step);
    base.parent = Optional.of(parentId);
    base.along = along;
  }

  /**
   * Adds the mirror image of a branch, on the other side of the upright plane through the place it
   * grows from. The copy has the calipers, weak spots and pads, but no wounds, tests or plans.
   *
   * @param azimuth which way the plane runs [rad]
   */
  public static Edit mirror(String id, double azimuth) {
    return edit(
        "Mirror " + id,
        draft -> {
          SegmentDraft base = draft.get(id);
          double toward = Refusal.angle(base.subject(), "the azimuth", azimuth);
          Direction3 across = Direction3.ofAzimuth(toward + Math.PI / 2);
          new Copying(draft, base, step -> step.minus(across.times(2 * across.vector().dot(step))))
              .onto(base.parent.orElse(""), base.along);
        });
  }

  /**
   * Adds a copy of a branch elsewhere. The copy has the calipers, weak spots and pads, but no
   * wounds, tests or plans.
   *
   * @param place where the copy starts
   * @param turn how far it is turned round the vertical, clockwise seen from above [rad]
   */
  public static Edit duplicate(String id, BranchPlace place, double turn) {
    return edit(
        "Duplicate " + id,
        draft -> {
          SegmentDraft base = draft.get(id);
          double angle = Refusal.angle(base.subject(), "the turn", turn);
          Rotation rotation = Rotation.about(Direction3.UP, -angle);
          new Copying(draft, base, step -> angle == 0 ? step : rotation.turn(step))
              .onto(place.parent(), place.along());
        });
  }

  /**
   * A place a branch can start at.
   *
   * @param parent the segment
   * @param along where on its axis, 0 to 1 [1]
   */
  public record BranchPlace(String parent, double along) {}
}
