// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shapes of what holds the tree: lines, pads, anchors and weights. */
final class Fittings {
  private static final int SIDES = 20;

  /** Density of steel, 7850 kg/m3 (from memory), to draw a weight in its true size. */
  private static final double STEEL = 7850;

  private final double line;

  /**
   * @param line radius to draw lines with [m]
   */
  Fittings(double line) {
    this.line = line;
  }

  /** A taut line. */
  Mesh line(Point3 from, Point3 to) {
    Direction3 way = to.minus(from).direction();
    double length = to.distance(from);
    return revolved(from, way, new double[][] {{0, line}, {length / 2, line}, {length, line}});
  }

  /** A sleeve round a branch where a line holds it. */
  Mesh pad(Axis axis, double radius) {
    double half = Math.min(Math.max(0.8 * radius, 4 * line), 8 * line);
    double out = radius + 1.5 * line;
    Point3 start = axis.point().plus(axis.direction().times(-half));
    double soft = 0.2 * half;
    return revolved(
        start,
        axis.direction(),
        new double[][] {
          {0, radius}, {soft / 3, out - line / 2}, {soft, out},
          {2 * half - soft, out}, {2 * half - soft / 3, out - line / 2}, {2 * half, radius}
        });
  }

  /** A ball where a line is tied to something that does not move. */
  Mesh anchor(Point3 at) {
    double radius = 3.2 * line;
    double[][] profile = new double[13][];
    for (int n = 0; n <= 12; n++) {
      double angle = Math.PI * (n + 0.001) / 12.002;
      profile[n] = new double[] {radius * (1 - Math.cos(angle)), radius * Math.sin(angle)};
    }
    return revolved(at.plus(new Vector3(0, 0, -radius)), Direction3.UP, profile);
  }

  /** A steel weight as high as it is wide, its top at a point, hanging along a direction. */
  Mesh weight(Point3 top, Direction3 down, double mass) {
    double radius = weightRadius(mass);
    double edge = 0.12 * radius;
    return revolved(
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

  private static Mesh revolved(Point3 start, Direction3 way, double[][] profile) {
    List<Station> stations = new ArrayList<>();
    for (double[] ring : profile) {
      stations.add(
          new Station(
              start.plus(way.times(ring[0])),
              way,
              ring[1],
              0,
              Vector3.ZERO,
              Palette.FITTING,
              1,
              ring[0]));
    }
    return new SkinMesher(SIDES, Optional.empty()).close(stations, SkinMesher.End.FLAT);
  }
}
