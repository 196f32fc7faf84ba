// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The wood that carries a place and can be bent to move it: from the union on the limb of the trunk
 * base outward through the place, and on to the end of its limb. On the limb of the trunk base
 * itself: from the trunk base outward.
 */
final class LimbPath {
  /** Places where a line can hold are about this far apart [m] (a choice). */
  static final double APART = 0.012;

  /** No more places than this along a path [1] (a choice). */
  static final int MOST_PLACES = 14;

  /**
   * A line is tied at least this far from the end of the wood, or it slips off [m] (assumption).
   */
  private static final double FROM_END = 0.003;

  private final TreeStand stand;
  private final Skeleton skeleton;
  private final Cutting cutting;
  private final List<Integer> segments;

  /** The path of a place that the cuts leave. */
  LimbPath(TreeStand stand, Spot spot) {
    this.stand = stand;
    skeleton = stand.skeleton();
    cutting = stand.cutting();
    segments = List.copyOf(path(skeleton.indexOf(spot.segment())));
  }

  private Deque<Integer> path(int target) {
    int base = skeleton.outward(0);
    boolean ofBase = root(target) == base;
    Deque<Integer> path = new ArrayDeque<>();
    int at = target;
    while (at != Skeleton.NONE && (ofBase || root(at) != base)) {
      path.addFirst(at);
      at = skeleton.parent(at);
    }
    int last = target;
    while (last != Skeleton.NONE) {
      last = next(last);
      if (last != Skeleton.NONE) {
        path.addLast(last);
      }
    }
    return path;
  }

  private int root(int segment) {
    int at = segment;
    while (skeleton.parent(at) != Skeleton.NONE && skeleton.joint(at) == Joint.CONTINUES) {
      at = skeleton.parent(at);
    }
    return at;
  }

  private int next(int segment) {
    return skeleton.children(segment).stream()
        .filter(child -> skeleton.joint(child) == Joint.CONTINUES && !cutting.isGone(child))
        .findFirst()
        .orElse(Skeleton.NONE);
  }

  /** Indices of its segments from the inside out. */
  List<Integer> segments() {
    return segments;
  }

  /** Where the path starts to bend [m, tree frame as measured]. */
  Point3 start() {
    int first = segments.get(0);
    return skeleton.point(first, from(0) / skeleton.length(first));
  }

  private double from(int k) {
    return skeleton.collar(segments.get(k));
  }

  /** Where on a segment the next one starts, or where its wood ends [m]. */
  private double to(int k) {
    int i = segments.get(k);
    double along =
        k + 1 < segments.size() ? skeleton.segment(segments.get(k + 1)).along() : cutting.left(i);
    return along * skeleton.length(i);
  }

  /** Length along the wood, from where it starts to bend to its end [m]. */
  double length() {
    double sum = 0;
    for (int k = 0; k < segments.size(); k++) {
      sum += Math.max(0, to(k) - from(k));
    }
    return sum;
  }

  /** Length along the wood from where the path starts to bend to a place on it [m]. */
  double lengthTo(Spot spot) {
    double sum = 0;
    for (int k = 0; k < segments.size(); k++) {
      int i = segments.get(k);
      if (skeleton.segment(i).id().equals(spot.segment())) {
        return sum + Math.max(0, spot.along() * skeleton.length(i) - from(k));
      }
      sum += Math.max(0, to(k) - from(k));
    }
    throw new IllegalArgumentException("no place of the path: " + spot);
  }

  /** Places where a line can hold, from the inside out. */
  List<TiePlace> places() {
    double length = length();
    int count = (int) Math.max(3, Math.min(MOST_PLACES, Math.floor(length / APART)));
    List<TiePlace> places = new ArrayList<>();
    for (int n = 1; n <= count; n++) {
      double wanted = Math.min(length * n / count, length - Math.min(FROM_END, length / 20));
      TiePlace place = at(wanted);
      if (!stand.isHeld(place.spot()) && place.compliance() > 0) {
        places.add(place);
      }
    }
    return places;
  }

  /** The place so far along the path, to a whole millimetre from its union where that fits. */
  TiePlace at(double wanted) {
    double before = 0;
    int k = 0;
    while (k + 1 < segments.size() && before + Math.max(0, to(k) - from(k)) < wanted) {
      before += Math.max(0, to(k) - from(k));
      k++;
    }
    int i = segments.get(k);
    double ofLimb = fromUnion(k);
    double whole = Math.rint((ofLimb + wanted - before) * 1000) / 1000;
    double s = Math.min(to(k), Math.max(from(k), from(k) + whole - ofLimb));
    Spot spot = new Spot(skeleton.segment(i).id(), Math.min(1, s / skeleton.length(i)));
    return new TiePlace(spot, ofLimb + s - from(k), before + s - from(k), stand.compliance(spot));
  }

  /** Length of the limb of a segment of the path from where it starts to bend up to the segment. */
  private double fromUnion(int k) {
    double sum = 0;
    for (int n = k; n > 0 && skeleton.joint(segments.get(n)) == Joint.CONTINUES; n--) {
      sum += Math.max(0, to(n - 1) - from(n - 1));
    }
    return sum;
  }
}
