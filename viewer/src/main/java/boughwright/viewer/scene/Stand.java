// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Planting;
import java.util.Optional;

/**
 * How the measured tree is turned to stand as planted.
 *
 * @param turn the turn
 * @param pivot the point that stays, the trunk base [m]
 */
public record Stand(Rotation turn, Point3 pivot) {

  /** The turn of a planting angle; none when there is no planting angle. */
  public static Stand of(Optional<Planting> planting, Point3 pivot) {
    Rotation turn =
        planting
            .filter(p -> p.tilt() != 0)
            .map(p -> Rotation.about(axis(p.towardAzimuth()), p.tilt()))
            .orElse(Rotation.NONE);
    return new Stand(turn, pivot);
  }

  private static Direction3 axis(double towardAzimuth) {
    Vector3 up = Direction3.UP.vector();
    return up.cross(Direction3.ofAzimuth(towardAzimuth).vector()).direction();
  }

  /** Where a point of the tree frame as measured stands [m, scene frame]. */
  public Point3 place(Point3 point) {
    return turn == Rotation.NONE ? point : pivot.plus(turn.turn(point.minus(pivot)));
  }

  /** Where a point of the scene lies in the tree frame as measured [m]. */
  public Point3 measured(Point3 point) {
    return turn == Rotation.NONE ? point : pivot.plus(turn.inverse().turn(point.minus(pivot)));
  }

  /** The way in the tree frame as measured of a direction in the scene. */
  public Direction3 measured(Direction3 way) {
    return turn == Rotation.NONE ? way : turn.inverse().turn(way);
  }

  Axis place(Axis axis) {
    return turn == Rotation.NONE
        ? axis
        : new Axis(
            place(axis.point()),
            turn.turn(axis.direction()),
            axis.strain(),
            turn.turn(axis.tensionSide()));
  }
}
