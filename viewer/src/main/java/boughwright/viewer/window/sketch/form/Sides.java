// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.RoundAngle;
import java.util.ArrayList;
import java.util.List;

/**
 * A side of a segment in words, for one who stands in front of the tree.
 *
 * @param words such as {@code underside}
 * @param round the place round the segment [rad]
 */
record Sides(String words, double round) {
  /** A side that the segment itself runs toward has no bark to speak of. */
  private static final double END_ON = Math.cos(Math.toRadians(35));

  private static final double TURN = 2 * Math.PI;

  /** The sides of a segment that points somewhere, seen from an azimuth [rad]. */
  static List<Sides> of(Direction3 axis, double front) {
    List<Sides> sides = new ArrayList<>();
    add(sides, "top", axis, Direction3.UP);
    add(sides, "underside", axis, Direction3.UP.opposite());
    add(sides, "left", axis, Direction3.ofAzimuth(front + Math.PI / 2));
    add(sides, "right", axis, Direction3.ofAzimuth(front - Math.PI / 2));
    add(sides, "front", axis, Direction3.ofAzimuth(front));
    add(sides, "back", axis, Direction3.ofAzimuth(front + Math.PI));
    return sides;
  }

  private static void add(List<Sides> sides, String words, Direction3 axis, Direction3 toward) {
    if (Math.abs(axis.dot(toward)) < END_ON) {
      Vector3 away = toward.vector().minus(axis.times(axis.dot(toward)));
      sides.add(new Sides(words, RoundAngle.of(axis, away)));
    }
  }

  /** The side that a place round the segment is nearest to. */
  static Sides nearest(List<Sides> sides, double round) {
    Sides nearest = sides.get(0);
    for (Sides side : sides) {
      if (apart(side.round(), round) < apart(nearest.round(), round)) {
        nearest = side;
      }
    }
    return nearest;
  }

  private static double apart(double one, double other) {
    return Math.abs(Math.IEEEremainder(one - other, TURN));
  }
}
