// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TrialResult;

/**
 * The end that a bend moves most, by which it is told how much of the bend is left.
 *
 * @param spot where on the tree
 * @param measured where it was before any bend [m, tree frame]
 */
record FarEnd(Spot spot, Point3 measured) {
  static FarEnd of(Skeleton skeleton, TrialResult bent) {
    SegmentTrial farthest = bent.segments().get(0);
    for (SegmentTrial segment : bent.segments()) {
      farthest = segment.endMoved(skeleton) > farthest.endMoved(skeleton) ? segment : farthest;
    }
    PathSample last = farthest.samples().get(farthest.samples().size() - 1);
    Spot spot = new Spot(farthest.segment(), last.along());
    return new FarEnd(spot, skeleton.point(skeleton.indexOf(spot.segment()), spot.along()));
  }

  /** How far it is from its place as measured [m]. */
  double moved(HeldTree tree) {
    return way(tree).norm();
  }

  private Vector3 way(HeldTree tree) {
    return tree.point(spot).minus(measured);
  }

  /** Part of its way that is lost from one pose to another, seen along that way [1]. */
  double lost(HeldTree held, HeldTree freed) {
    Vector3 way = way(held);
    double squared = way.dot(way);
    return squared > 0 ? Math.min(1, Math.max(0, 1 - way(freed).dot(way) / squared)) : 0;
  }
}
