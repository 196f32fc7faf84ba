// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;

/**
 * Segments that continue one another from end to start: one shoot.
 *
 * @param segments indices in the skeleton, from the inner to the outer, at least one
 */
public record Limb(List<Integer> segments) {
  public Limb {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a limb has at least one segment");
    }
  }

  /** All limbs that cuts leave; says in {@code limbOf} which one each segment is part of. */
  static List<Limb> all(Cutting cutting, int[] limbOf) {
    Skeleton skeleton = cutting.skeleton();
    boolean[] taken = new boolean[skeleton.size()];
    List<Limb> limbs = new ArrayList<>();
    for (int n = 0; n < skeleton.size(); n++) {
      int head = skeleton.outward(n);
      if (taken[head] || cutting.isGone(head)) {
        continue;
      }
      List<Integer> run = new ArrayList<>();
      for (int i = head; i != Skeleton.NONE; i = next(cutting, i)) {
        taken[i] = true;
        limbOf[i] = limbs.size();
        run.add(i);
      }
      limbs.add(new Limb(run));
    }
    return limbs;
  }

  private static int next(Cutting cutting, int i) {
    Skeleton skeleton = cutting.skeleton();
    for (int child : skeleton.children(i)) {
      if (skeleton.joint(child) == Joint.CONTINUES
          && skeleton.segment(child).along() == 1
          && !cutting.isGone(child)) {
        return child;
      }
    }
    return Skeleton.NONE;
  }

  /** The segment it starts with. */
  public int first() {
    return segments.get(0);
  }

  /** The segment it ends with. */
  public int last() {
    return segments.get(segments.size() - 1);
  }

  /** What its first segment is to the tree. */
  public Kind kind(Skeleton skeleton) {
    return skeleton.segment(first()).kind();
  }
}
