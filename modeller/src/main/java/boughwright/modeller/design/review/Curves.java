// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Branches from the inside of a curve. */
final class Curves {
  /** How far below and above a branch the trunk is looked at: over its caliper there [1]. */
  private static final double BESIDE = 1.5;

  /** The same over the length of the trunk, where that is more [1]. */
  private static final double LEAST_SHARE = 0.06;

  private final Structure structure;

  Curves(Structure structure) {
    this.structure = structure;
  }

  /**
   * How a line turns at a place.
   *
   * @param angle by how much [rad]
   * @param inside toward the inside of the curve; of no length where it is straight
   */
  record Turn(double angle, Vector3 inside) {}

  /** Empty where too little of the line lies below or above. */
  static Optional<Turn> at(WoodLine line, double s) {
    double beside = Math.max(BESIDE * line.caliper(s), LEAST_SHARE * line.length());
    if (s < beside / 2 || line.length() - s < beside / 2) {
      return Optional.empty();
    }
    Direction3 below = line.chord(s - beside, s);
    Direction3 above = line.chord(s, s + beside);
    return Optional.of(new Turn(below.angleTo(above), above.vector().minus(below.vector())));
  }

  List<Found> find() {
    List<Found> out = new ArrayList<>();
    for (Shoot stem : structure.stems()) {
      for (Shoot shoot : structure.judgedOn(stem)) {
        if (structure.isBranch(shoot)) {
          at(stem.line(), shoot.seat().at()).ifPresent(turn -> look(shoot, turn, out));
        }
      }
    }
    return out;
  }

  private void look(Shoot shoot, Turn turn, List<Found> out) {
    if (turn.angle() < structure.limit(Limit.CURVE_TURN)) {
      return;
    }
    Vector3 side = shoot.seat().side();
    double off = Math.atan2(side.cross(turn.inside()).norm(), side.dot(turn.inside()));
    if (off <= structure.limit(Limit.CURVE_SIDE)) {
      out.add(
          Found.branch(
              FaultKind.INSIDE_CURVE,
              shoot,
              List.of(
                  structure.measured(Limit.CURVE_SIDE, off),
                  structure.measured(Limit.CURVE_TURN, turn.angle()))));
    }
  }
}
