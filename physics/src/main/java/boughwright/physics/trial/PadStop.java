// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import java.util.Locale;
import java.util.Optional;

/**
 * The side branch that stops a pad from sliding along its limb.
 *
 * @param branch the side branch
 * @param far how far from the pad it leaves the limb [m]
 */
record PadStop(String branch, double far) {
  /** Farther off, a pad has slid before it is stopped. Common practice, no source [m]. */
  private static final double NEAR = 15e-3;

  /** Thinner, it gives way. Common practice, no source [m]. */
  private static final double THINNEST = 3e-3;

  /**
   * The nearest one.
   *
   * @param at where the pad sits
   * @param outward whether it slides toward the tip
   */
  static Optional<PadStop> of(Skeleton skeleton, Spot at, boolean outward) {
    int i = skeleton.indexOf(at.segment());
    double s = at.along() * skeleton.length(i);
    Optional<PadStop> best = Optional.empty();
    double gone = 0;
    while (gone <= NEAR) {
      best = nearer(best, on(skeleton, i, outward ? s - gone : s + gone, outward));
      gone += outward ? skeleton.length(i) - s : s;
      int next = outward ? onward(skeleton, i) : inward(skeleton, i);
      if (next == Skeleton.NONE) {
        break;
      }
      i = next;
      s = outward ? 0 : skeleton.length(i);
    }
    return best.filter(stop -> stop.far <= NEAR);
  }

  /** The nearest on one segment; distances count from a place that may lie beyond its ends. */
  private static Optional<PadStop> on(Skeleton skeleton, int i, double from, boolean outward) {
    Optional<PadStop> best = Optional.empty();
    for (int child : skeleton.children(i)) {
      double leaves = skeleton.segment(child).along() * skeleton.length(i);
      double far = outward ? leaves - from : from - leaves;
      boolean stops =
          skeleton.joint(child) == Joint.UNION && skeleton.caliper(child, 0) >= THINNEST;
      if (stops && far >= 0) {
        best = nearer(best, Optional.of(new PadStop(skeleton.segment(child).id(), far)));
      }
    }
    return best;
  }

  private static Optional<PadStop> nearer(Optional<PadStop> one, Optional<PadStop> other) {
    return one.isPresent() && (other.isEmpty() || one.get().far <= other.get().far) ? one : other;
  }

  private static int onward(Skeleton skeleton, int i) {
    return skeleton.children(i).stream()
        .filter(child -> skeleton.joint(child) == Joint.CONTINUES)
        .findFirst()
        .orElse(Skeleton.NONE);
  }

  private static int inward(Skeleton skeleton, int i) {
    return skeleton.joint(i) == Joint.CONTINUES ? skeleton.parent(i) : Skeleton.NONE;
  }

  /** In words, for a pad that would slide. */
  String words() {
    return String.format(
        Locale.ROOT, "the fork of %s, %.0f mm on, stops it: lay it there", branch, 1000 * far);
  }
}
