// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.physics.rod.RodPose;

/**
 * A held tree in the course of a wait. Held by the length of its lines it hardly moves, and one
 * step is enough. Under weights or constant pulls, or let go, it moves as its wood creeps: then the
 * wait is cut into steps that grow with time, each from the strains half-way between its start and
 * its end, and cut again until the pose at its end no longer changes.
 */
final class Wait {
  /** Movement in the wait that one step may leave out of account, of the whole bend [1]. */
  private static final double SMALL = 0.005;

  /** Change of the last pose at which cutting ends, of the whole bend [1]. */
  private static final double AGREED = 0.005;

  private static final int FEWEST = 4;
  private static final int MOST = 32;

  /** The first of many steps, as a part of the wait where that is shorter [s]. */
  private static final double FIRST = 300;

  private final HeldTree start;
  private final double seconds;
  private final double ring;
  private final double way;

  Wait(HeldTree start, double seconds, double ring) {
    this.start = start;
    this.seconds = seconds;
    this.ring = ring;
    way = Math.max(1e-6, farthestFromRest(start));
  }

  /** The tree at the end of the wait. */
  HeldTree over() {
    HeldTree once = step(start, seconds, ring);
    if (!once.holds() || moved(start, once) <= SMALL * way) {
      return once;
    }
    HeldTree coarse = walked(FEWEST);
    for (int steps = 2 * FEWEST; steps <= MOST && coarse.holds(); steps *= 2) {
      HeldTree fine = walked(steps);
      if (!fine.holds() || moved(coarse, fine) <= AGREED * way) {
        return fine;
      }
      coarse = fine;
    }
    return coarse;
  }

  private static HeldTree step(HeldTree from, double seconds, double ring) {
    return from.solved(
        from.rods().after(from.solution().pose(), from.aging().spell(seconds, ring)), from.grip());
  }

  private HeldTree walked(int steps) {
    HeldTree now = start;
    double first = Math.min(FIRST, seconds / steps);
    double done = 0;
    for (int k = 1; k <= steps && now.holds(); k++) {
      double until = first * Math.pow(seconds / first, (k - 1.0) / (steps - 1));
      now = evenStep(now, until - done, ring * (until - done) / seconds);
      done = until;
    }
    return now;
  }

  /** A step whose fibres go evenly from where it starts to where it ends. */
  private static HeldTree evenStep(HeldTree from, double seconds, double ring) {
    HeldTree guess = step(from, seconds, ring);
    if (!guess.holds()) {
      return guess;
    }
    RodPose to = guess.solution().pose();
    return from.solved(
        from.rods().between(from.solution().pose(), to, from.aging().spell(seconds, ring)),
        from.grip());
  }

  private static double moved(HeldTree a, HeldTree b) {
    double most = 0;
    for (int span = 0; span < a.rods().spans().size(); span++) {
      double end = a.rods().spans().get(span).length();
      Point3 before = a.solution().pose().section(span, end).position();
      most = Math.max(most, before.distance(b.solution().pose().section(span, end).position()));
    }
    return most;
  }

  private static double farthestFromRest(HeldTree tree) {
    double most = 0;
    for (int span = 0; span < tree.rods().spans().size(); span++) {
      double end = tree.rods().spans().get(span).length();
      Point3 now = tree.solution().pose().section(span, end).position();
      most = Math.max(most, now.distance(tree.rods().restEnd(span)));
    }
    return most;
  }
}
