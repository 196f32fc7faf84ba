// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Direction3;

/** How deep a branch sits in its parent. */
final class Collar {
  /**
   * Deepest a branch may sit, in radii of its parent: a branch that runs almost along its parent
   * has a bark line of its own long before the two cylinders part. Common practice, no source.
   */
  private static final double DEEPEST_IN_RADII = 2;

  private Collar() {}

  /**
   * Distance along a branch from its parent's axis to its parent's bark; 0 where the same shoot
   * goes on or the tree's unions bend from the axis [m]. The parent is the cone its calipers give,
   * and beyond its ends a cylinder.
   */
  static double depth(Skeleton skeleton, int i) {
    if (skeleton.tree().unions() == Unions.AXIS
        || skeleton.parent(i) == Skeleton.NONE
        || skeleton.joint(i) == Joint.CONTINUES) {
      return 0;
    }
    int parent = skeleton.parent(i);
    Direction3 along = skeleton.direction(parent);
    double angle = along.angleTo(skeleton.direction(i));
    double forward = Math.cos(angle);
    double outward = Math.sin(angle);
    Segment wood = skeleton.segment(parent);
    double length = skeleton.length(parent);
    double at = skeleton.segment(i).along() * length;
    double slope = (wood.caliperEnd() - wood.caliperStart()) / 2 / length;
    double radius = wood.caliperStart() / 2 + slope * at;
    double depth = radius / (outward - slope * forward);
    double foot = at + depth * forward;
    if (!(depth > 0) || foot > length || foot < 0) {
      double end = (forward > 0 ? wood.caliperEnd() : wood.caliperStart()) / 2;
      depth = end / outward;
    }
    return Math.min(depth, DEEPEST_IN_RADII * radius);
  }
}
