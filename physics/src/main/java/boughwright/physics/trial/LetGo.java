// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Skeleton;
import java.util.Optional;

/**
 * What stays of a bend that is let go at once: fibres that flowed keep the others from coming back
 * whole. Coils are taken off too. Nothing of creep or growth is in it.
 *
 * @param segment the segment whose end the bend moves most
 * @param moved how far it moves when bent [m]
 * @param stays how far from its place as measured it comes to rest [m]
 */
public record LetGo(String segment, double moved, double stays) {
  /** A movement below this is none [m]. */
  private static final double NOTHING = 1e-5;

  /** Bends, lets go and looks; empty where no pose holds or nothing moves. */
  public static Optional<LetGo> of(TrialRequest request) {
    HeldTree forced = HeldTree.of(request, HeldTree.Grip.ALL);
    if (!forced.holds()) {
      return Optional.empty();
    }
    HeldTree free = forced.then(0, HeldTree.Grip.NOTHING);
    if (!free.holds()) {
      return Optional.empty();
    }
    TrialResult freed = free.result();
    Skeleton skeleton = new Skeleton(request.tree());
    LetGo most = new LetGo("", 0, 0);
    for (SegmentTrial bent : forced.result().segments()) {
      double moved = bent.endMoved(skeleton);
      if (moved > most.moved) {
        SegmentTrial after = freed.segment(bent.segment()).orElseThrow();
        most = new LetGo(bent.segment(), moved, after.endMoved(skeleton));
      }
    }
    return most.moved > NOTHING ? Optional.of(most) : Optional.empty();
  }
}
