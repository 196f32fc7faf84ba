// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Container;

/** The inside of a container in the viewer's frame. */
final class Box {
  /** Stands for a line that stays inside. */
  static final double NEVER = Double.POSITIVE_INFINITY;

  private final double middleX;
  private final double middleY;
  private final double alongX;
  private final double alongY;
  private final double halfLength;
  private final double halfWidth;
  private final double floor;
  private final double rim;

  /** A container, placed from the trunk base, seen with an azimuth toward the viewer [rad]. */
  Box(Container container, double azimuth) {
    double cos = Math.cos(azimuth);
    double sin = Math.sin(azimuth);
    middleX = cos * container.centreX() - sin * container.centreY();
    middleY = sin * container.centreX() + cos * container.centreY();
    alongX = Math.cos(azimuth - container.turn());
    alongY = Math.sin(azimuth - container.turn());
    halfLength = container.size().length() / 2;
    halfWidth = container.size().width() / 2;
    rim = container.rim();
    floor = rim - container.size().depth();
  }

  /** How far along the length of the container a place is from its middle [m]. */
  double along(Point3 at) {
    return (at.x() - middleX) * alongX + (at.y() - middleY) * alongY;
  }

  /** How far across the container a place is from its middle [m]. */
  double across(Point3 at) {
    return (at.y() - middleY) * alongX - (at.x() - middleX) * alongY;
  }

  /** Distance of a place from the nearest wall, seen from above; outside less than 0 [m]. */
  double margin(Point3 at) {
    return Math.min(halfLength - Math.abs(along(at)), halfWidth - Math.abs(across(at)));
  }

  double floor() {
    return floor;
  }

  /** Its middle, half-way up [m, viewer's frame]. */
  Point3 middle() {
    return new Point3(middleX, middleY, (floor + rim) / 2);
  }

  /**
   * The fraction of the way from one round place to another at which their hull passes a wall or
   * the floor; 0 if the first is not inside [1].
   */
  double leaves(Point3 from, double fromRadius, Point3 to, double toRadius) {
    double along = along(from);
    double across = across(from);
    double length = along(to);
    double width = across(to);
    double best = passes(halfLength - along - fromRadius, halfLength - length - toRadius);
    best = Math.min(best, passes(halfLength + along - fromRadius, halfLength + length - toRadius));
    best = Math.min(best, passes(halfWidth - across - fromRadius, halfWidth - width - toRadius));
    best = Math.min(best, passes(halfWidth + across - fromRadius, halfWidth + width - toRadius));
    return Math.min(best, passes(from.z() - floor - fromRadius, to.z() - floor - toRadius));
  }

  /** Where room that runs linearly from one value to another is used up. */
  private static double passes(double first, double last) {
    if (first < 0) {
      return 0;
    }
    return last < 0 ? first / (first - last) : NEVER;
  }
}
