// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Skeleton;
import java.util.List;

/**
 * The smooth curve through the nodes of a limb in the measured pose.
 *
 * <p>Cubic Hermite pieces; the tangent at a node is that of the parabola through it and its two
 * neighbours, so unequal segments do not make it overshoot. It leaves the parent along the first
 * segment.
 */
final class RestCurve {
  private final Skeleton skeleton;
  private final List<Integer> run;
  private final Vector3[] slope;

  RestCurve(Skeleton skeleton, Limb limb) {
    this.skeleton = skeleton;
    this.run = limb.segments();
    slope = new Vector3[run.size() + 1];
    slope[0] = way(0);
    for (int k = 1; k < run.size(); k++) {
      double before = skeleton.length(run.get(k - 1));
      double after = skeleton.length(run.get(k));
      slope[k] =
          way(k - 1).times(after / (before + after)).plus(way(k).times(before / (before + after)));
    }
    int last = run.size();
    slope[last] = last == 1 ? way(0) : way(last - 1).times(1.5).plus(slope[last - 1].times(-0.5));
  }

  private Vector3 way(int k) {
    return skeleton.direction(run.get(k)).vector();
  }

  /** The curve at a fraction of the k-th segment of the limb [m, tree frame]. */
  Point3 point(int k, double u) {
    return piece(k).point(u);
  }

  /** The derivative of {@link #point} by the length along the segment [1, tree frame]. */
  Vector3 slope(int k, double u) {
    return piece(k).slope(u).times(1 / skeleton.length(run.get(k)));
  }

  private Hermite piece(int k) {
    int i = run.get(k);
    return new Hermite(skeleton.start(i), scaled(k, k), skeleton.end(i), scaled(k, k + 1));
  }

  /** How far the curve lies from the straight segment [m, tree frame]. */
  Vector3 offset(int k, double u) {
    return point(k, u).minus(skeleton.point(run.get(k), u));
  }

  private Vector3 scaled(int k, int node) {
    return slope[node].times(skeleton.length(run.get(k)));
  }
}
