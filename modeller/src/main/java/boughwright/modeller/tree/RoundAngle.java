// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * Places round a segment at rest: an angle that counts clockwise when looking from the segment's
 * start to its end, from its upper side; on a segment within 10 degrees of vertical, from the side
 * toward azimuth 0.
 */
public final class RoundAngle {
  private static final double NEARLY_VERTICAL = Math.toRadians(10);

  private RoundAngle() {}

  /** Whether angles round a segment count from the side toward azimuth 0. */
  public static boolean isUpright(Direction3 axis) {
    double fromUp = axis.angleTo(Direction3.UP);
    return Math.min(fromUp, Math.PI - fromUp) <= NEARLY_VERTICAL;
  }

  /** The direction of angle 0: square to the axis, to its upper side or toward azimuth 0. */
  public static Direction3 zero(Direction3 axis) {
    Direction3 aim = isUpright(axis) ? Direction3.ofAzimuth(0) : Direction3.UP;
    return aim.vector().minus(axis.times(aim.dot(axis))).direction();
  }

  /**
   * The direction from the axis at an angle round it.
   *
   * @param axis direction of the segment
   * @param angle angle [rad]
   */
  public static Direction3 direction(Direction3 axis, double angle) {
    Direction3 zero = zero(axis);
    Vector3 quarter = axis.vector().cross(zero.vector());
    return zero.times(Math.cos(angle)).plus(quarter.times(Math.sin(angle))).direction();
  }

  /**
   * The angle at which a vector points away from the axis, 0 to 2 pi [rad].
   *
   * @param axis direction of the segment
   * @param away a vector not along the axis
   */
  public static double of(Direction3 axis, Vector3 away) {
    Direction3 zero = zero(axis);
    Vector3 quarter = axis.vector().cross(zero.vector());
    double angle = Math.atan2(away.dot(quarter), away.dot(zero.vector()));
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }
}
