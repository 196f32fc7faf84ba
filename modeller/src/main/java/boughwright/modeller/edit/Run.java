// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Skeleton;

/** How far and which way a segment runs from where it starts. */
public sealed interface Run {

  /**
   * To a point.
   *
   * @param end where it ends [m, tree frame]
   */
  record To(Point3 end) implements Run {}

  /**
   * As read with a tape and a protractor.
   *
   * @param azimuth which way it leans [rad]
   * @param elevation how far it rises above level; straight up is pi / 2 [rad]
   * @param length length of its axis, more than 0 [m]
   */
  record Heading(double azimuth, double elevation, double length) implements Run {

    /** The heading of a segment as it is; azimuth 0 where it stands upright. */
    public static Heading of(Skeleton skeleton, int i) {
      return of(skeleton.start(i), skeleton.end(i));
    }

    static Heading of(Point3 start, Point3 end) {
      Vector3 way = end.minus(start);
      double level = Math.hypot(way.x(), way.y());
      double azimuth = level == 0 ? 0 : Math.atan2(-way.x(), -way.y());
      return new Heading(
          azimuth < 0 ? azimuth + 2 * Math.PI : azimuth + 0.0,
          Math.atan2(way.z(), level),
          way.norm());
    }
  }

  /**
   * Where the segment ends.
   *
   * @param start where it starts
   * @throws InputException if it has no length, or one that no tree has
   */
  default Point3 end(Point3 start, String subject) throws InputException {
    if (this instanceof Heading heading) {
      double azimuth = Refusal.angle(subject, "the azimuth", heading.azimuth());
      double elevation = Refusal.angle(subject, "the elevation", heading.elevation());
      double length = Refusal.size(subject, "the length", heading.length());
      return start.plus(Direction3.ofAzimuth(azimuth, elevation).times(length));
    }
    Point3 end = ((To) this).end();
    return new Point3(
        Refusal.coordinate(subject, "x of the end", end.x()),
        Refusal.coordinate(subject, "y of the end", end.y()),
        Refusal.coordinate(subject, "z of the end", end.z()));
  }
}
