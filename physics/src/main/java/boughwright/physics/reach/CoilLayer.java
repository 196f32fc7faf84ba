// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.hold.CoilShape;
import boughwright.physics.trial.TreeStand;
import java.util.Map;

/** Lays a coil along a limb: from turns on the wood that carries it to a turn beyond the hand. */
final class CoilLayer {
  /** Turns before the fork: the middle of 1.5 to 2 (common practice, no source) [1]. */
  static final double TURNS = 1.75;

  /** Slant to the axis: the middle of 45 to 60 degrees (common practice, no source) [rad]. */
  static final double ANGLE = Math.toRadians(50);

  /** Turns beyond the place where the hand takes hold (a choice) [1]. */
  private static final double BEYOND = 1;

  private final TreeStand stand;
  private final Skeleton skeleton;
  private final LimbPath path;

  CoilLayer(TreeStand stand, LimbPath path) {
    this.stand = stand;
    skeleton = stand.skeleton();
    this.path = path;
  }

  /** A coil of some wire for a limb that a hand bends at a place. */
  Coil of(TiePlace place, Material metal, double gauge, int strands) {
    CoilShape shape = new CoilShape(gauge, strands, ANGLE);
    int first = path.segments().get(0);
    int carrier = skeleton.parent(first);
    Spot from =
        carrier == Skeleton.NONE
            ? new Spot(skeleton.segment(first).id(), 0)
            : before(carrier, skeleton.segment(first).along(), shape);
    return new Coil(from, beyond(place, shape), metal, gauge, strands, ANGLE, Hand.RIGHT, Map.of());
  }

  private Spot beyond(TiePlace place, CoilShape shape) {
    int i = skeleton.indexOf(place.spot().segment());
    double more = BEYOND * shape.pitch(skeleton.caliper(i, place.spot().along()));
    return path.at(Math.min(path.length(), place.alongPath() + more)).spot();
  }

  /** So many turns from a fork toward the trunk base, or outward where there is more room. */
  private Spot before(int carrier, double fork, CoilShape shape) {
    double needs = TURNS * shape.pitch(skeleton.caliper(carrier, fork));
    double below = fork * skeleton.length(carrier);
    double above = (stand.cutting().left(carrier) - fork) * skeleton.length(carrier);
    if (below < needs && above > below) {
      return at(carrier, below + Math.min(above, needs));
    }
    double at = below - needs;
    int on = carrier;
    while (at < 0
        && skeleton.joint(on) == Joint.CONTINUES
        && skeleton.parent(on) != Skeleton.NONE) {
      int inner = skeleton.parent(on);
      at += skeleton.segment(on).along() * skeleton.length(inner);
      on = inner;
    }
    return at(on, Math.max(0, at));
  }

  private Spot at(int segment, double s) {
    double along = Math.rint(1000 * s / skeleton.length(segment)) / 1000;
    return new Spot(skeleton.segment(segment).id(), Math.min(1, along));
  }
}
