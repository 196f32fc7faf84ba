// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;

/**
 * Which caliper reading each end of each segment has. A segment that continues another with the
 * same caliper shares the reading at the node between them.
 */
final class Readings {
  /** Standard deviations in the half-width that holds nine in ten of a normal distribution. */
  static final double NINE_IN_TEN = 1.6449;

  private final int[] start;
  private final int[] end;
  private final int count;
  private final double deviation;

  Readings(Skeleton skeleton) {
    start = new int[skeleton.size()];
    end = new int[skeleton.size()];
    int found = 0;
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      start[i] = shared(skeleton, i) ? end[skeleton.parent(i)] : found++;
      end[i] = found++;
    }
    count = found;
    deviation = skeleton.tree().caliperError().orElse(Tree.USUAL_CALIPER_ERROR) / NINE_IN_TEN;
  }

  private static boolean shared(Skeleton skeleton, int i) {
    int parent = skeleton.parent(i);
    if (parent == Skeleton.NONE || skeleton.joint(i) != Joint.CONTINUES) {
      return false;
    }
    Segment segment = skeleton.segment(i);
    return segment.along() == 1 && segment.caliperStart() == skeleton.segment(parent).caliperEnd();
  }

  int count() {
    return count;
  }

  int atStart(int segment) {
    return start[segment];
  }

  int atEnd(int segment) {
    return end[segment];
  }

  /** Standard deviation of a reading [m]. */
  double deviation() {
    return deviation;
  }
}
