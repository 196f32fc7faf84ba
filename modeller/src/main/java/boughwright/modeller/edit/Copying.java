// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.RoundAngle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Adds a copy of a branch, turned or mirrored about the place it grows from. */
final class Copying {
  private final Draft draft;
  private final SegmentDraft base;

  /** What becomes of a vector: a turn or a mirror image. */
  private final UnaryOperator<Vector3> image;

  Copying(Draft draft, SegmentDraft base, UnaryOperator<Vector3> image) {
    this.draft = draft;
    this.base = base;
    this.image = image;
  }

  void onto(String parentId, double along) throws InputException {
    if (base.parent.isEmpty()) {
      throw Refusal.of(
          base.subject(),
          "base-copied",
          "it is the trunk base, and a tree has only one",
          "Choose a segment that grows on another");
    }
    SegmentDraft parent = draft.get(parentId);
    double place = Refusal.fraction(base.subject(), along);
    Point3 from = draft.start(base);
    Point3 to = draft.point(parent, place);
    List<SegmentDraft> copies = new ArrayList<>();
    List<SegmentDraft> branch = draft.branch(base);
    Map<String, String> names = names(branch);
    for (SegmentDraft old : branch) {
      SegmentDraft copy = new SegmentDraft(old.build());
      copy.id = names.get(old.id);
      copy.parent = old.parent.map(id -> names.getOrDefault(id, id));
      copy.end = to.plus(image.apply(old.end.minus(from)));
      copy.features = features(old, draft.start(old));
      copy.joints(old.joint);
      copies.add(copy);
    }
    SegmentDraft first = copies.get(branch.indexOf(base));
    first.parent = Optional.of(parentId);
    first.along = place;
    first.joints(Joint.UNION);
    int at = draft.after(parent);
    for (SegmentDraft copy : copies) {
      draft.insert(at++, copy);
    }
    copyPads(names);
  }

  /** The copy is in leaf as its original is. */
  private void copyPads(Map<String, String> names) {
    List<Pad> pads = new ArrayList<>(draft.pads);
    List<String> taken = new ArrayList<>(pads.stream().map(Pad::id).toList());
    for (Pad pad : draft.pads) {
      String segment = names.get(pad.segment());
      if (segment != null) {
        String name = NextId.free(pad.id(), taken);
        taken.add(name);
        pads.add(pad.at(segment, pad.along()).called(name));
      }
    }
    draft.pads = pads;
  }

  /** New names: those that start with the branch's name start with the copy's. */
  private Map<String, String> names(List<SegmentDraft> branch) throws InputException {
    Set<String> taken = new HashSet<>(draft.ids());
    Map<String, String> names = new HashMap<>();
    String now = NextId.segment(draft.before, base.parent.orElseThrow(), base.kind, Joint.UNION);
    names.put(base.id, now);
    taken.add(now);
    for (SegmentDraft old : branch) {
      if (old != base) {
        String rest = old.id.startsWith(base.id) ? old.id.substring(base.id.length()) : "";
        String name = NextId.free(rest.isEmpty() ? old.id : now + rest, taken);
        names.put(old.id, name);
        taken.add(name);
      }
    }
    return names;
  }

  private Features features(SegmentDraft old, Point3 start) {
    if (old.features.deadFace().isEmpty()) {
      return old.features;
    }
    Direction3 axis = old.end.minus(start).direction();
    DeadFace face = old.features.deadFace().get();
    Vector3 away = image.apply(RoundAngle.direction(axis, face.round()).vector());
    double round = RoundAngle.of(image.apply(axis.vector()).direction(), away);
    return RoundPlaces.with(old.features, round);
  }
}
