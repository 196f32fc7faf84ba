// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Skeleton;
import java.util.Arrays;
import java.util.List;

/**
 * What the cuts of a plan leave of a tree. Immutable.
 *
 * <p>A cut at a fraction of a segment takes what lies beyond it: the rest of the segment and every
 * segment that starts there or further out. A cut at 0 takes the whole segment.
 */
public final class Cutting {
  private static final int NO_CUT = -1;

  private final Skeleton skeleton;
  private final List<Spot> cuts;

  /** Shape: one per segment; fraction left of its length, 0 when it is gone [1]. */
  private final double[] left;

  /** Shape: one per segment; index of the cut that shortens or takes it. */
  private final int[] cutBy;

  /**
   * Makes the cuts.
   *
   * @throws IllegalArgumentException if a cut is on an unknown segment
   */
  public Cutting(Skeleton skeleton, List<Spot> cuts) {
    this.skeleton = skeleton;
    this.cuts = List.copyOf(cuts);
    left = new double[skeleton.size()];
    cutBy = new int[skeleton.size()];
    Arrays.fill(left, 1);
    Arrays.fill(cutBy, NO_CUT);
    for (int c = 0; c < cuts.size(); c++) {
      int i = skeleton.indexOf(cuts.get(c).segment());
      if (cutBy[i] == NO_CUT || cuts.get(c).along() < left[i]) {
        left[i] = cuts.get(c).along();
        cutBy[i] = c;
      }
    }
    for (int n = 0; n < skeleton.size(); n++) {
      takeWithParent(skeleton.outward(n));
    }
  }

  private void takeWithParent(int i) {
    int parent = skeleton.parent(i);
    if (parent == Skeleton.NONE || cutBy[parent] == NO_CUT) {
      return;
    }
    if (skeleton.segment(i).along() >= left[parent]) {
      left[i] = 0;
      cutBy[i] = cutBy[parent];
    }
  }

  public Skeleton skeleton() {
    return skeleton;
  }

  /** Fraction left of a segment's length, from its start; 0 when nothing is left of it [1]. */
  public double left(int i) {
    return left[i];
  }

  /** True if nothing is left of a segment. */
  public boolean isGone(int i) {
    return left[i] == 0;
  }

  /**
   * True if a place is still on the tree.
   *
   * @throws IllegalArgumentException if its segment is unknown
   */
  public boolean holds(Spot spot) {
    int i = skeleton.indexOf(spot.segment());
    return !isGone(i) && spot.along() <= left[i];
  }

  /** The cut that took a place which is no longer on the tree. */
  Spot cutThatTook(Spot spot) {
    return cuts.get(cutBy[skeleton.indexOf(spot.segment())]);
  }
}
