// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;

/**
 * Where the ellipsoid of a pad is.
 *
 * @param centre its middle [m]
 * @param lengthway the way its length runs: along the branch
 * @param thickway the way its thickness runs: to the upper side of the branch, on one that is
 *     nearly upright to the side toward azimuth 0
 * @param widthway the way its width runs, square to both
 * @param halfLength half its length [m]
 * @param halfWidth half its width [m]
 * @param halfThickness half its thickness [m]
 */
public record PadShape(
    Point3 centre,
    Direction3 lengthway,
    Direction3 thickway,
    Direction3 widthway,
    double halfLength,
    double halfWidth,
    double halfThickness) {

  /**
   * The shape of a pad on a branch that runs through a point.
   *
   * @param pad the pad
   * @param at where the axis of the branch is at the pad [m]
   * @param way the direction of the branch there
   */
  public static PadShape of(Pad pad, Point3 at, Direction3 way) {
    Direction3 upper = RoundAngle.zero(way);
    return new PadShape(
        at.plus(upper.times(pad.raised())),
        way,
        upper,
        way.vector().cross(upper.vector()).direction(),
        pad.length() / 2,
        pad.width() / 2,
        pad.thickness() / 2);
  }

  /** The shape of a pad on the tree as measured. */
  public static PadShape of(Pad pad, Skeleton skeleton) {
    int i = skeleton.indexOf(pad.segment());
    return of(pad, skeleton.point(i, pad.along()), skeleton.direction(i));
  }
}
