// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;

/**
 * How limbs are curved as they grew: segments are measured straight, and the curvature of the
 * smooth curve through their nodes is the turn at each node over the half segments beside it,
 * linear in between. The outermost pieces of a limb go on as curved as their inner node.
 */
final class RestCurvature {
  private final Skeleton skeleton;

  /** Curvature at both ends of each segment [rad/m, tree frame], shape (segments). */
  private final Vector3[] atStart;

  private final Vector3[] atEnd;

  RestCurvature(Skeleton skeleton) {
    this.skeleton = skeleton;
    atStart = new Vector3[skeleton.size()];
    atEnd = new Vector3[skeleton.size()];
    for (int i = 0; i < skeleton.size(); i++) {
      int parent = skeleton.parent(i);
      boolean goesOn =
          parent != Skeleton.NONE
              && skeleton.joint(i) == Joint.CONTINUES
              && skeleton.segment(i).along() == 1;
      if (goesOn) {
        atStart[i] = turn(parent, i);
        atEnd[parent] = atStart[i];
      }
    }
  }

  /** The turn from one segment to the next over the distance between their middles [rad/m]. */
  private Vector3 turn(int inner, int outer) {
    Vector3 from = skeleton.direction(inner).vector();
    Vector3 to = skeleton.direction(outer).vector();
    Vector3 axis = from.cross(to);
    double sine = axis.norm();
    if (sine < 1e-12) {
      return Vector3.ZERO;
    }
    double angle = Math.atan2(sine, from.dot(to));
    double distance = (skeleton.length(inner) + skeleton.length(outer)) / 2;
    return axis.times(angle / sine / distance);
  }

  /**
   * Rate of turning of the limb as it grew [rad/m, tree frame].
   *
   * @param i the segment
   * @param s distance from its start [m]
   */
  Vector3 at(int i, double s) {
    Vector3 start = atStart[i] != null ? atStart[i] : atEnd[i];
    Vector3 end = atEnd[i] != null ? atEnd[i] : atStart[i];
    if (start == null || end == null) {
      return Vector3.ZERO;
    }
    double x = s / skeleton.length(i);
    return start.times(1 - x).plus(end.times(x));
  }
}
