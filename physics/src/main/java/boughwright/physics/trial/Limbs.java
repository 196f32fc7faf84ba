// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;

/** Which segments are one limb: a limb is a chain of segments that continue each other. */
final class Limbs {
  private final int[] of;
  private final int[] first;
  private final int count;

  Limbs(Skeleton skeleton) {
    of = new int[skeleton.size()];
    int[] starts = new int[skeleton.size()];
    int found = 0;
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      int parent = skeleton.parent(i);
      if (parent != Skeleton.NONE && skeleton.joint(i) == Joint.CONTINUES) {
        of[i] = of[parent];
      } else {
        starts[found] = i;
        of[i] = found++;
      }
    }
    count = found;
    first = starts;
  }

  int count() {
    return count;
  }

  /** The limb of a segment. */
  int of(int segment) {
    return of[segment];
  }

  /** The segment a limb begins with. */
  int first(int limb) {
    return first[limb];
  }

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
    Limbs limbs = new Limbs(skeleton);
    List<Integer> out = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      if (limbs.of(i) == limbs.of(segment)) {
        out.add(i);
      }
    }
    return out;
  }
}
