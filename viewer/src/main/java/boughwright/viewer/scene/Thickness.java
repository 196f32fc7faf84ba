// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import java.util.List;

/** Radius over bark along a limb: straight between the calipers of each segment. */
final class Thickness {
  private final Skeleton skeleton;
  private final List<Integer> run;

  Thickness(Skeleton skeleton, Limb limb) {
    this.skeleton = skeleton;
    this.run = limb.segments();
  }

  /**
   * Half the caliper at a place [m]. Where two calipers are given for one node, the ring they share
   * lies half-way between them.
   */
  double radius(int k, double u) {
    Segment segment = skeleton.segment(run.get(k));
    if (u == 1 && k + 1 < run.size()) {
      Segment next = skeleton.segment(run.get(k + 1));
      return (segment.caliperEnd() + next.caliperStart()) / 4;
    }
    return radius(segment, u);
  }

  static double radius(Segment segment, double u) {
    return (segment.caliperStart() + u * (segment.caliperEnd() - segment.caliperStart())) / 2;
  }
}
