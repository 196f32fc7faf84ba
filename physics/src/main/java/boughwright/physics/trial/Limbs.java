// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;

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
}
