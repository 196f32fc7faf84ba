// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Slot;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.List;

/**
 * A tree with its segments where a trial brings them, so that what judges a tree as measured can
 * judge it bent. All places, ids and cuts of the plan mean the same on it: what the cuts take is
 * carried along stiffly. A segment is straight between its two bent ends, and what sits on its bark
 * turns with it, but not round it. The tree without its pull tests, which were of the old shape.
 *
 * @param tree the bent tree
 */
public record BentTree(Tree tree) {
  /**
   * The tree of a trial.
   *
   * @param tree the tree as measured
   * @param plan the plan that was tried
   * @param trial what came of it
   * @throws IllegalArgumentException if no pose holds
   */
  public static BentTree of(Tree tree, Plan plan, TrialResult trial) {
    if (!trial.outcome().holds()) {
      throw new IllegalArgumentException("plan " + plan.id() + " holds no pose");
    }
    return new BentTree(new Bending(new Skeleton(tree), plan, trial).bent());
  }

  private static final class Bending {
    private final Skeleton skeleton;
    private final Point3[] start;
    private final Point3[] end;

    Bending(Skeleton skeleton, Plan plan, TrialResult trial) {
      this.skeleton = skeleton;
      start = new Point3[skeleton.size()];
      end = new Point3[skeleton.size()];
      Cutting cutting = new Cutting(skeleton, plan.cuts());
      for (int n = 0; n < skeleton.size(); n++) {
        int i = skeleton.outward(n);
        int parent = skeleton.parent(i);
        start[i] =
            parent == Skeleton.NONE
                ? skeleton.start(i)
                : start[parent].toward(end[parent], skeleton.segment(i).along());
        end[i] =
            trial
                .segment(skeleton.segment(i).id())
                .map(piece -> endOf(i, piece.end(), cutting.left(i)))
                .orElseGet(() -> start[i].plus(skeleton.end(i).minus(skeleton.start(i))));
      }
    }

    /** Where the whole segment would end, of which only a part is left. */
    private Point3 endOf(int i, Point3 endOfLeft, double left) {
      return left < 1 ? start[i].plus(endOfLeft.minus(start[i]).times(1 / left)) : endOfLeft;
    }

    Tree bent() {
      Tree tree = skeleton.tree();
      List<Segment> segments = new ArrayList<>();
      for (int i = 0; i < skeleton.size(); i++) {
        segments.add(segment(i));
      }
      return new TreeDraft(tree)
          .segments(segments)
          .wounds(tree.wounds().stream().map(this::wound).toList())
          .pullTests(List.of())
          .foliage(Foliage.UNSAID)
          .build();
    }

    private Segment segment(int i) {
      Segment old = skeleton.segment(i);
      return new Segment(
          old.id(),
          old.parent(),
          old.along(),
          old.joins(),
          old.kind(),
          old.start(),
          end[i],
          old.caliperStart(),
          old.caliperEnd(),
          old.bark(),
          old.live(),
          features(i, old.features()),
          old.extras());
    }

    private Wound wound(Wound old) {
      int i = skeleton.indexOf(old.segment());
      return new Wound(
          old.id(),
          old.segment(),
          old.along(),
          round(i, old.round()),
          old.width(),
          old.height(),
          old.seenOn(),
          old.extras());
    }

    private Features features(int i, Features old) {
      return new Features(
          old.hollow(),
          old.deadFace()
              .map(
                  face ->
                      new DeadFace(
                          round(i, face.round()), face.width(), face.depth(), face.extras())),
          old.slot()
              .map(
                  slot ->
                      new Slot(round(i, slot.round()), slot.width(), slot.depth(), slot.extras())),
          old.knots(),
          old.grain(),
          old.includedBark());
    }

    private double round(int i, double round) {
      Direction3 before = skeleton.direction(i);
      Direction3 after = end[i].minus(start[i]).direction();
      Direction3 away = RoundAngle.direction(before, round);
      return before.angleTo(after) == 0
          ? round
          : RoundAngle.of(after, Rotation.between(before, after).turn(away.vector()));
    }
  }
}
