// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/** Shapes of what holds the tree: threads, rods, what tightens a line, weights. */
final class Fittings {
  /** Density of steel, 7850 kg/m3 (from memory), to draw a weight in its true size. */
  private static final double STEEL = 7850;

  private final double line;

  /**
   * @param line radius to draw lines with [m]
   */
  Fittings(double line) {
    this.line = line;
  }

  /** A thread. */
  Mesh thread(Point3 from, Point3 to) {
    return rod(from, to, line);
  }

  /** A straight round rod. */
  static Mesh rod(Point3 from, Point3 to, double radius) {
    Direction3 way = to.minus(from).direction();
    double length = to.distance(from);
    return Turned.of(
        from, way, new double[][] {{0, radius}, {length / 2, radius}, {length, radius}});
  }

  /** The stick that twists a double line, square to it. */
  Mesh stick(Point3 middle, Direction3 way) {
    double half = 9 * line;
    Vector3 across = way.vector().cross(Strands.level(way)).times(0.6);
    Direction3 along = Strands.level(way).plus(across).direction();
    return rod(middle.plus(along.times(-half)), middle.plus(along.times(half)), 1.5 * line);
  }

  /**
   * A turnbuckle in a line.
   *
   * @param most the most room there is for it along the line [m]
   */
  Mesh turnbuckle(Point3 middle, Direction3 way, double most) {
    double half = Math.min(11 * line, most / 2);
    double eye = 0.25 * half;
    double thick = 2.6 * line;
    return Turned.of(
        middle.plus(way.times(-half)),
        way,
        new double[][] {
          {0, 1.2 * line},
          {eye, 1.2 * line},
          {1.01 * eye, thick},
          {2 * half - 1.01 * eye, thick},
          {2 * half - eye, 1.2 * line},
          {2 * half, 1.2 * line}
        });
  }

  /** A steel weight as high as it is wide, its top at a point, hanging along a direction. */
  Mesh weight(Point3 top, Direction3 down, double mass) {
    double radius = weightRadius(mass);
    double edge = 0.12 * radius;
    return Turned.of(
        top,
        down,
        new double[][] {
          {0, 0.2 * radius}, {0.01 * radius, radius - edge}, {edge, radius},
          {2 * radius - edge, radius}, {1.99 * radius, radius - edge}, {2 * radius, 0.2 * radius}
        });
  }

  static double weightRadius(double mass) {
    return Math.cbrt(mass / (2 * Math.PI * STEEL));
  }
}
