// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;

/** Cuts that leave nothing above a leader of the wood that it takes over from. */
final class TopCuts {
  /** A fork thinner than this part of the leader's wood stays as a branch (a choice) [1]. */
  private static final double COMPETES = 0.5;

  private final Cutting cutting;
  private final Skeleton skeleton;

  TopCuts(Cutting cutting) {
    this.cutting = cutting;
    skeleton = cutting.skeleton();
  }

  /** The cuts for a way from the base to a tip, from the base outward. */
  List<CutFace> above(List<Integer> way) {
    List<CutFace> cuts = new ArrayList<>();
    for (int n = 1; n < way.size(); n++) {
      cuts.addAll(at(way.get(n)));
    }
    return cuts;
  }

  /** What goes on beyond the place where a segment of the way starts. */
  private List<CutFace> at(int next) {
    int parent = skeleton.parent(next);
    double past = past(parent, next);
    if (past < cutting.left(parent)) {
      return List.of(cut(parent, past));
    }
    List<CutFace> cuts = new ArrayList<>();
    for (int other : skeleton.children(parent)) {
      if (other != next && competes(next, other) && !cutting.isGone(other)) {
        cuts.add(cut(other, 0));
      }
    }
    return cuts;
  }

  /** Whether a fork at the end of a segment goes up beside the one that is to lead. */
  private boolean competes(int next, int other) {
    int parent = skeleton.parent(next);
    return skeleton.segment(other).along() == 1
        && skeleton.segment(other).kind() == skeleton.segment(parent).kind()
        && skeleton.segment(other).caliperStart()
            >= COMPETES * skeleton.segment(next).caliperStart();
  }

  /** Along the parent, past the wood of a branch by half its caliper, as far as it reaches [1]. */
  private double past(int parent, int next) {
    double from = skeleton.segment(next).along();
    double half = skeleton.segment(next).caliperStart() / 2;
    double sine =
        skeleton.direction(parent).vector().cross(skeleton.direction(next).vector()).norm();
    double reach = half / Math.max(sine, half / skeleton.length(parent));
    return from + reach / skeleton.length(parent);
  }

  private CutFace cut(int segment, double along) {
    return along == 0
        ? CutFace.ofWhole(skeleton, segment)
        : CutFace.across(skeleton, segment, along);
  }
}
