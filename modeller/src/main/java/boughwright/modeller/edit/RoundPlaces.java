// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.Wound;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Keeps what sits on the bark on its side of the wood.
 *
 * <p>Angles round a segment count from its upper side, and on one that is nearly upright from the
 * side toward azimuth 0. When a segment is tilted from the one to the other, the same number would
 * mean another side; the number is changed so that the place turns with the wood.
 */
final class RoundPlaces {
  /** Turn of a segment, by id, of those whose angles count from another side now. */
  private final Map<String, Axes> tilted = new HashMap<>();

  private record Axes(Direction3 before, Direction3 after) {
    double place(double round) {
      Direction3 away = RoundAngle.direction(before, round);
      Rotation turn = Rotation.between(before, after);
      return RoundAngle.of(after, turn.turn(away.vector())) + 0.0;
    }
  }

  private RoundPlaces(Tree before, Tree after) {
    Skeleton was = new Skeleton(before);
    Skeleton is = new Skeleton(after);
    for (int i = 0; i < is.size(); i++) {
      String id = is.segment(i).id();
      if (was.has(id)) {
        Axes axes = new Axes(was.direction(was.indexOf(id)), is.direction(i));
        if (RoundAngle.isUpright(axes.before()) != RoundAngle.isUpright(axes.after())) {
          tilted.put(id, axes);
        }
      }
    }
  }

  /** The changed document with its angles counted anew where a segment was tilted. */
  static Document kept(Document before, Document after) {
    RoundPlaces places = new RoundPlaces(before.tree(), after.tree());
    if (places.tilted.isEmpty()) {
      return after;
    }
    Tree old = after.tree();
    Tree tree =
        new TreeDraft(old)
            .segments(old.segments().stream().map(places::segment).toList())
            .wounds(old.wounds().stream().map(places::wound).toList())
            .build();
    List<Plan> plans =
        after.plans().stream()
            .map(
                plan ->
                    plan.withProposals(plan.proposals().stream().map(places::proposal).toList()))
            .toList();
    return after.withTree(tree).withPlans(plans);
  }

  /** The same features with the dead side elsewhere. */
  static Features with(Features features, double round) {
    return new Features(
        features.hollow(),
        features
            .deadFace()
            .map(face -> new DeadFace(round + 0.0, face.width(), face.depth(), face.extras())),
        features.slot(),
        features.knots(),
        features.grain(),
        features.includedBark());
  }

  private Segment segment(Segment old) {
    Axes axes = tilted.get(old.id());
    if (axes == null || old.features().deadFace().isEmpty()) {
      return old;
    }
    SegmentDraft segment = new SegmentDraft(old);
    double round = old.features().deadFace().get().round();
    segment.features = with(old.features(), axes.place(round));
    return segment.build();
  }

  private Wound wound(Wound old) {
    return Optional.ofNullable(tilted.get(old.segment()))
        .map(
            axes ->
                new Wound(
                    old.id(),
                    old.segment(),
                    old.along(),
                    axes.place(old.round()),
                    old.width(),
                    old.height(),
                    old.seenOn(),
                    old.extras()))
        .orElse(old);
  }

  private Proposal proposal(Proposal old) {
    return old.withLines(this::line).withAids(old.aids().stream().map(this::aid).toList());
  }

  private GuyLine line(GuyLine old) {
    Axes axes = tilted.get(old.at().segment());
    return axes == null || old.padRound().isEmpty()
        ? old
        : new GuyLine(
            old.id(),
            old.at(),
            OptionalDouble.of(axes.place(old.padRound().getAsDouble())),
            old.anchor(),
            old.hold(),
            old.tackle(),
            old.extras());
  }

  private Aid aid(Aid old) {
    Axes axes = tilted.get(old.segment());
    return axes == null || old.round().isEmpty()
        ? old
        : new Aid(
            old.kind(),
            old.segment(),
            old.from(),
            old.to(),
            OptionalDouble.of(axes.place(old.round().getAsDouble())),
            old.width(),
            old.depth(),
            old.count(),
            old.extras());
  }
}
