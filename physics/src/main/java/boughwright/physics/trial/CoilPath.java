// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where a coil lies: the one way through the tree from its start to its end.
 *
 * @param coil the coil
 * @param stretches the stretches of segments it covers, in the order it is wound
 */
record CoilPath(Coil coil, List<Stretch> stretches) {
  /** Shorter than this is nothing [m]. */
  private static final double NOTHING = 1e-6;

  /**
   * A stretch of one segment.
   *
   * @param segment segment index
   * @param from where the wire comes on to it [m]
   * @param to where it leaves; less than that where it runs toward the base [m]
   */
  record Stretch(int segment, double from, double to) {
    double low() {
      return Math.min(from, to);
    }

    double high() {
      return Math.max(from, to);
    }

    double length() {
      return Math.abs(to - from);
    }
  }

  CoilPath {
    stretches = List.copyOf(stretches);
  }

  static CoilPath of(Skeleton skeleton, Coil coil) {
    List<Stretch> inward = toBase(skeleton, coil.from());
    List<Stretch> outward = toBase(skeleton, coil.to());
    while (inward.size() > 1 && outward.size() > 1 && meetFurtherIn(inward, outward)) {
      inward.remove(inward.size() - 1);
      outward.remove(outward.size() - 1);
    }
    Stretch last = inward.remove(inward.size() - 1);
    Stretch first = outward.remove(outward.size() - 1);
    List<Stretch> all = new ArrayList<>(inward);
    all.add(new Stretch(last.segment(), last.from(), first.from()));
    Collections.reverse(outward);
    outward.forEach(one -> all.add(new Stretch(one.segment(), one.to(), one.from())));
    return new CoilPath(coil, all.stream().filter(one -> one.length() > NOTHING).toList());
  }

  /** Whether the last segments of two ways to the base are one, and so are those before them. */
  private static boolean meetFurtherIn(List<Stretch> one, List<Stretch> other) {
    return one.get(one.size() - 2).segment() == other.get(other.size() - 2).segment();
  }

  /** The way from a place to the start of the trunk. */
  private static List<Stretch> toBase(Skeleton skeleton, Spot spot) {
    List<Stretch> way = new ArrayList<>();
    int i = skeleton.indexOf(spot.segment());
    double at = spot.along() * skeleton.length(i);
    while (i != Skeleton.NONE) {
      way.add(new Stretch(i, at, 0));
      int parent = skeleton.parent(i);
      if (parent != Skeleton.NONE) {
        at = skeleton.segment(i).along() * skeleton.length(parent);
      }
      i = parent;
    }
    return way;
  }

  /** Length along the branches, from axis to axis [m]. */
  double length() {
    return stretches.stream().mapToDouble(Stretch::length).sum();
  }
}
