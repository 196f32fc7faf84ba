// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import java.util.OptionalDouble;

/** Places of the rods as places a person finds on the bark. */
final class BarkPlaces {
  private final TreeRods rods;
  private final Skeleton skeleton;
  private final double frontAzimuth;

  /**
   * For one tree seen from one side.
   *
   * @param frontAzimuth the azimuth the tree is seen from, for words [rad]
   */
  BarkPlaces(TreeRods rods, double frontAzimuth) {
    this.rods = rods;
    skeleton = rods.timber().skeleton();
    this.frontAzimuth = frontAzimuth;
  }

  /**
   * A place on the bark.
   *
   * @param span index of the span
   * @param s distance along it [m]
   * @param side from the axis toward the place, at rest [tree frame]
   */
  FailurePlace place(int span, double s, Vector3 side) {
    TreeRods.Run run = rods.run(span);
    int i = run.piece().segment();
    double along = run.toSegment(s);
    return new FailurePlace(
        skeleton.segment(i).id(),
        Math.min(1, along / skeleton.length(i)),
        fromUnion(i, along),
        RoundAngle.of(skeleton.direction(i), side),
        SideWord.of(side, frontAzimuth));
  }

  /** Distance along the limb from where it starts to bend; empty on the limb of the trunk base. */
  private OptionalDouble fromUnion(int i, double s) {
    double distance = s;
    int at = i;
    while (skeleton.parent(at) != Skeleton.NONE && skeleton.joint(at) == Joint.CONTINUES) {
      at = skeleton.parent(at);
      distance += skeleton.length(at);
    }
    return skeleton.parent(at) == Skeleton.NONE
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.max(0, distance - rods.timber().bendsFrom(at)));
  }
}
