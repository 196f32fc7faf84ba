// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;

/**
 * Segments that continue one another from end to start: one shoot, drawn in one skin.
 *
 * @param segments indices in the skeleton, from the inner to the outer
 */
record Limb(List<Integer> segments) {
  Limb {
    segments = List.copyOf(segments);
  }

  /** All limbs of a tree, each after the limb it sits on. */
  static List<Limb> of(Skeleton skeleton) {
    boolean[] taken = new boolean[skeleton.size()];
    List<Limb> limbs = new ArrayList<>();
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      if (!taken[i]) {
        limbs.add(from(skeleton, i, taken));
      }
    }
    return limbs;
  }

  private static Limb from(Skeleton skeleton, int head, boolean[] taken) {
    List<Integer> run = new ArrayList<>();
    for (int i = head; i != Skeleton.NONE; i = continuation(skeleton, i)) {
      taken[i] = true;
      run.add(i);
    }
    return new Limb(run);
  }

  private static int continuation(Skeleton skeleton, int i) {
    for (int c : skeleton.children(i)) {
      if (skeleton.joint(c) == Joint.CONTINUES && skeleton.segment(c).along() == 1) {
        return c;
      }
    }
    return Skeleton.NONE;
  }

  /** How many of its segments the cuts leave, the last one maybe in part. */
  int count(Cutting kept) {
    int count = 0;
    for (int i : segments) {
      if (kept.isGone(i)) {
        break;
      }
      count++;
      if (kept.left(i) < 1) {
        break;
      }
    }
    return count;
  }

  int first() {
    return segments.get(0);
  }
}
