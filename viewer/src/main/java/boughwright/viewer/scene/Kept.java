// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.util.Arrays;
import java.util.List;

/** How much of every segment is left after the cuts of a plan. */
final class Kept {
  private final double[] upTo;

  /**
   * @param cuts places where the tree is cut; a place that is not on the tree is passed over
   */
  Kept(Skeleton skeleton, List<Spot> cuts) {
    upTo = new double[skeleton.size()];
    Arrays.fill(upTo, 1);
    for (Spot cut : cuts) {
      if (skeleton.has(cut.segment())) {
        int i = skeleton.indexOf(cut.segment());
        upTo[i] = Math.min(upTo[i], cut.along());
      }
    }
    boolean[] cutHere = new boolean[upTo.length];
    cuts.stream()
        .filter(cut -> skeleton.has(cut.segment()))
        .forEach(cut -> cutHere[skeleton.indexOf(cut.segment())] = true);
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      int parent = skeleton.parent(i);
      if (parent != Skeleton.NONE && isBeyond(parent, skeleton.segment(i).along(), cutHere)) {
        upTo[i] = 0;
        cutHere[i] = true;
      }
    }
  }

  private boolean isBeyond(int parent, double along, boolean[] cutHere) {
    return cutHere[parent] && (along > upTo[parent] || along == 1 || upTo[parent] == 0);
  }

  /** The fraction of a segment that is left, from its start; 0 when it is gone. */
  double upTo(int segment) {
    return upTo[segment];
  }

  boolean isGone(int segment) {
    return upTo[segment] == 0;
  }

  /** How many segments of a limb are left, the last one maybe in part. */
  int count(Limb limb) {
    int count = 0;
    for (int i : limb.segments()) {
      if (isGone(i)) {
        break;
      }
      count++;
      if (upTo[i] < 1) {
        break;
      }
    }
    return count;
  }
}
