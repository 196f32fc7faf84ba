// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;

/** Limbs: chains of segments each of which continues the one before. */
final class Limbs {
  private Limbs() {}

  /** The segment a limb starts with: the one that joins by a union, or the trunk base. */
  static int rootOf(Skeleton skeleton, int segment) {
    int at = segment;
    while (skeleton.parent(at) != Skeleton.NONE && skeleton.joint(at) == Joint.CONTINUES) {
      at = skeleton.parent(at);
    }
    return at;
  }

  /** All segments of the limb that a segment is part of, in file order. */
  static List<Integer> segmentsWith(Skeleton skeleton, int segment) {
    int root = rootOf(skeleton, segment);
    List<Integer> out = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      if (rootOf(skeleton, i) == root) {
        out.add(i);
      }
    }
    return out;
  }
}
