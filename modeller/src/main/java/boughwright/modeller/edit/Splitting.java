// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes two segments of one; the inner half keeps the name. */
final class Splitting {
  private final Draft draft;
  private final SegmentDraft inner;
  private final double at;
  private final Skeleton skeleton;
  private final int index;

  Splitting(Draft draft, SegmentDraft segment, double at) {
    this.draft = draft;
    this.inner = segment;
    this.at = at;
    skeleton = new Skeleton(draft.before.tree());
    index = skeleton.indexOf(segment.id);
  }

  void into(String newId) throws InputException {
    requirePlace();
    Point3 middle = skeleton.point(index, at);
    double caliper = skeleton.caliper(index, at);
    SegmentDraft outer = new SegmentDraft(inner.build());
    outer.id = newId;
    outer.parent = Optional.of(inner.id);
    outer.start = Optional.empty();
    outer.along = 1;
    outer.joins = Optional.empty();
    outer.joint = Joint.CONTINUES;
    outer.caliperStart = caliper;
    outer.features = withoutCrotch(inner.features);
    outer.extras = Map.of();
    for (SegmentDraft child : draft.children(inner)) {
      Spot spot = spot(new Spot(inner.id, child.along), newId);
      child.parent = Optional.of(spot.segment());
      child.along = spot.along();
    }
    inner.end = middle;
    inner.caliperEnd = caliper;
    draft.insert(draft.segments.indexOf(inner) + 1, outer);
    relocate(newId);
    Woods.keep(draft, Map.of(newId, inner.id));
  }

  private void requirePlace() throws InputException {
    if (!(at > 0 && at < 1)) {
      throw Refusal.of(
          inner.subject(),
          "out-of-range",
          "it is to be split at " + Amount.number(at) + " of its length",
          "Choose a place between its two ends");
    }
    double collar = skeleton.collar(index) / skeleton.length(index);
    if (at <= collar) {
      throw Refusal.of(
          inner.subject(),
          "split-in-union",
          "the place lies inside the wood it grows from",
          collar < 1
              ? "Split it more than "
                  + Amount.millimetres(skeleton.collar(index))
                  + " from its start"
              : "Correct its end first: the segment ends inside its parent");
    }
  }

  private static Features withoutCrotch(Features features) {
    return new Features(
        features.hollow(),
        features.deadFace(),
        features.slot(),
        features.knots(),
        features.grain(),
        false);
  }

  private Spot spot(Spot old, String newId) {
    if (!old.segment().equals(inner.id)) {
      return old;
    }
    return old.along() <= at
        ? new Spot(inner.id, old.along() == at ? 1 : old.along() / at, old.extras())
        : new Spot(newId, outward(old.along()), old.extras());
  }

  private double outward(double along) {
    return along >= 1 ? 1 : Math.max(0, (along - at) / (1 - at));
  }

  private void relocate(String newId) throws InputException {
    for (var plan : draft.plans) {
      for (var proposal : plan.proposals()) {
        for (Aid aid : proposal.aids()) {
          requireBetweenCuts(aid);
        }
      }
    }
    new Relocated(
            new Relocation() {
              @Override
              public Optional<Spot> spot(Spot old) {
                return Optional.of(Splitting.this.spot(old, newId));
              }

              @Override
              public Optional<String> segment(String old) {
                return Optional.of(old);
              }

              @Override
              public Optional<String> outer(String old) {
                return Optional.of(old.equals(inner.id) ? newId : old);
              }

              @Override
              public List<Aid> aid(Aid old) {
                return old.segment().equals(inner.id) ? AidHalves.of(old, at, newId) : List.of(old);
              }
            })
        .apply(draft);
  }

  private void requireBetweenCuts(Aid aid) throws InputException {
    if (aid.segment().equals(inner.id) && AidHalves.isThroughCut(aid, at, skeleton.length(index))) {
      throw Refusal.of(
          inner.subject(),
          "split-in-cut",
          "a plan has a relief cut right there",
          "Split it a little to one side, or take the cut out of the plan first");
    }
  }
}
