// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the middle of the wood stands, now and after cuts. Sums over all that grows on a segment
 * are kept, so that a cut costs no more than the way to the trunk base. Immutable.
 */
final class WoodMiddle {
  private final Structure structure;
  private final Cutting cutting;
  private final Skeleton skeleton;

  /** Shape: one per segment; of it and all that grows on it. */
  private final Moment[] grown;

  private final Moment whole;

  WoodMiddle(Structure structure) {
    this.structure = structure;
    cutting = structure.wood().cutting();
    skeleton = cutting.skeleton();
    grown = new Moment[skeleton.size()];
    Moment sum = Moment.NONE;
    for (int n = skeleton.size() - 1; n >= 0; n--) {
      int i = skeleton.outward(n);
      Moment all = piece(i, cutting.left(i));
      for (int child : skeleton.children(i)) {
        all = all.plus(grown[child]);
      }
      grown[i] = all;
      sum = skeleton.parent(i) == Skeleton.NONE ? sum.plus(all) : sum;
    }
    whole = sum;
  }

  /**
   * Volume, and volume times distance from the trunk base.
   *
   * @param volume [m3]
   * @param first [m4, tree frame]
   */
  private record Moment(double volume, Vector3 first) {
    static final Moment NONE = new Moment(0, Vector3.ZERO);

    Moment plus(Moment other) {
      return new Moment(volume + other.volume, first.plus(other.first));
    }

    Moment minus(Moment other) {
      return new Moment(volume - other.volume, first.minus(other.first));
    }
  }

  /** Of a segment from its start up to a fraction of it. */
  private Moment piece(int i, double to) {
    if (to == 0 || skeleton.segment(i).kind() == Kind.ROOT) {
      return Moment.NONE;
    }
    Frustum piece =
        new Frustum(
            i,
            skeleton.start(i),
            skeleton.point(i, to),
            skeleton.caliper(i, 0) / 2,
            skeleton.caliper(i, to) / 2);
    double volume = Balance.volume(piece);
    return new Moment(volume, Balance.middle(piece).minus(structure.base()).times(volume));
  }

  /** As it is. */
  Balance now() {
    return balance(whole);
  }

  /** After more cuts. */
  Balance after(List<Spot> cuts) {
    Map<Integer, Double> lowest = new HashMap<>();
    cuts.forEach(cut -> lowest.merge(skeleton.indexOf(cut.segment()), cut.along(), Math::min));
    Moment left = whole;
    for (Map.Entry<Integer, Double> cut : lowest.entrySet()) {
      if (!isTaken(cut.getKey(), lowest)) {
        left = left.minus(beyond(cut.getKey(), cut.getValue()));
      }
    }
    return balance(left);
  }

  /** Whether a cut nearer to the trunk base takes a segment. */
  private boolean isTaken(int segment, Map<Integer, Double> cuts) {
    int i = segment;
    for (int parent = skeleton.parent(i); parent != Skeleton.NONE; parent = skeleton.parent(i)) {
      Double cut = cuts.get(parent);
      if (cut != null && skeleton.segment(i).along() >= cut) {
        return true;
      }
      i = parent;
    }
    return false;
  }

  private Moment beyond(int i, double along) {
    double left = cutting.left(i);
    if (along >= left) {
      return Moment.NONE;
    }
    Moment lost = piece(i, left).minus(piece(i, along));
    for (int child : skeleton.children(i)) {
      if (skeleton.segment(child).along() >= along) {
        lost = lost.plus(grown[child]);
      }
    }
    return lost;
  }

  private Balance balance(Moment moment) {
    Vector3 seen = structure.seen(moment.first().times(1 / moment.volume()));
    return new Balance(seen.x(), seen.y());
  }
}
