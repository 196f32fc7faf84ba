// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.CoilShape;
import java.util.Locale;

/**
 * What keeps the start of a coil from turning: so many turns before it comes to the branch it
 * bends, or the fork it crosses there. Common practice, no source.
 *
 * @param turns turns between the start of the wire and the fork it crosses; 0 where it crosses none
 *     [1]
 * @param fork whether it crosses a fork from one branch to another
 * @param on the segment its start is wound on
 */
record CoilAnchorage(double turns, boolean fork, String on) {
  /** With so many turns before the fork a coil is held (common practice, no source) [1]. */
  static final double ENOUGH = 1.5;

  static CoilAnchorage of(Skeleton skeleton, CoilPath path) {
    CoilShape shape = CoilShape.of(path.coil());
    double turns = 0;
    String on = path.coil().from().segment();
    for (int n = 0; n < path.stretches().size(); n++) {
      CoilPath.Stretch stretch = path.stretches().get(n);
      if (n > 0 && isFork(skeleton, path.stretches().get(n - 1), stretch)) {
        return new CoilAnchorage(turns, true, on);
      }
      double middle = (stretch.from() + stretch.to()) / 2 / skeleton.length(stretch.segment());
      turns += stretch.length() / shape.pitch(skeleton.caliper(stretch.segment(), middle));
    }
    return new CoilAnchorage(0, false, on);
  }

  /** Whether the wire crosses from one branch to another, which a shoot that goes on is not. */
  private static boolean isFork(Skeleton skeleton, CoilPath.Stretch one, CoilPath.Stretch next) {
    int child = skeleton.parent(next.segment()) == one.segment() ? next.segment() : one.segment();
    boolean siblings =
        skeleton.parent(next.segment()) != one.segment()
            && skeleton.parent(one.segment()) != next.segment();
    return siblings || skeleton.joint(child) != Joint.CONTINUES;
  }

  boolean isEnough() {
    return fork && turns >= ENOUGH;
  }

  String words() {
    if (!fork) {
      return "nothing holds its start: begin it with "
          + "1.5 to 2 turns on thicker wood, across a fork (common practice, no source)";
    }
    String held =
        String.format(Locale.ROOT, "held by %.1f turns on %s and the fork it crosses", turns, on);
    return isEnough()
        ? held
        : held + "; 1.5 to 2 turns are usual before it (common practice, no source)";
  }
}
