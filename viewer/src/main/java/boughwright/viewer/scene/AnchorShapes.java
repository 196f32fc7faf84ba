// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.AnchorKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What lines are tied to beside the tree, each kind in a shape of its own. */
final class AnchorShapes {
  private static final int RING_STEPS = 24;

  /** How far the eye of a screw goes round [rad]. */
  private static final double EYE = Math.toRadians(345);

  private final double line;

  /**
   * @param line radius that lines are drawn with [m]
   */
  AnchorShapes(double line) {
    this.line = line;
  }

  /**
   * An anchor.
   *
   * @param kind what it is; empty for a ball
   * @param at where the line is tied [m, scene frame]
   * @param pull the way the line leaves it
   */
  List<Mesh> of(Optional<AnchorKind> kind, Point3 at, Direction3 pull) {
    if (kind.isEmpty()) {
      return List.of(ball(at));
    }
    return switch (kind.get()) {
      case SCREW -> screw(at);
      case RIM -> hook(at, pull);
      case PEG -> peg(at, pull);
      case FRAME -> List.of(block(at, pull));
    };
  }

  private Mesh ball(Point3 at) {
    double radius = 3.2 * line;
    double[][] profile = new double[13][];
    for (int n = 0; n <= 12; n++) {
      double angle = Math.PI * (n + 0.001) / 12.002;
      profile[n] = new double[] {radius * (1 - Math.cos(angle)), radius * Math.sin(angle)};
    }
    return Turned.of(at.plus(new Vector3(0, 0, -radius)), Direction3.UP, profile);
  }

  /** An eye with a pointed shank below it. */
  private List<Mesh> screw(Point3 at) {
    double eye = 2.6 * line;
    Point3 middle = at.plus(new Vector3(0, 0, -0.5 * eye));
    Mesh shank =
        Turned.of(
            middle.plus(new Vector3(0, 0, -eye)),
            Direction3.UP.opposite(),
            new double[][] {
              {0, 1.1 * line},
              {5 * line, 1.1 * line},
              {8 * line, 0.2 * line},
              {8.1 * line, 0.1 * line}
            });
    return List.of(ring(middle, eye), shank);
  }

  private Mesh ring(Point3 middle, double radius) {
    List<Point3> round = new ArrayList<>();
    for (int n = 0; n <= RING_STEPS; n++) {
      double angle = EYE * n / RING_STEPS - Math.PI / 2;
      double across = radius * Math.cos(angle) * Math.sqrt(0.5);
      round.add(middle.plus(new Vector3(across, across, radius * Math.sin(angle))));
    }
    return new Tube(0.9 * line, 8, Palette.FITTING).along(round);
  }

  /** A hook that goes over the rim, away from the pull. */
  private List<Mesh> hook(Point3 at, Direction3 pull) {
    Vector3 away = level(pull).times(-1);
    double width = 3 * line;
    List<Point3> way = new ArrayList<>();
    way.add(at.plus(new Vector3(0, 0, -7 * line)));
    for (int n = 0; n <= 8; n++) {
      double angle = Math.PI * n / 8;
      way.add(
          at.plus(away.times(width * (1 - Math.cos(angle))))
              .plus(new Vector3(0, 0, width * Math.sin(angle))));
    }
    way.add(at.plus(away.times(2 * width)).plus(new Vector3(0, 0, -9 * line)));
    return List.of(new Tube(1.3 * line, 10, Palette.FITTING).along(way));
  }

  /** A stake that leans away from the pull, with a head. */
  private List<Mesh> peg(Point3 at, Direction3 pull) {
    Direction3 down = level(pull).times(0.35).plus(new Vector3(0, 0, -1)).direction();
    double thick = 1.9 * line;
    Point3 top = at.plus(down.times(-5 * line));
    return List.of(
        Turned.of(
            top,
            down,
            new double[][] {
              {0, 1.6 * thick},
              {1.2 * line, 1.6 * thick},
              {1.3 * line, thick},
              {18 * line, thick},
              {24 * line, 0.15 * thick},
              {24.1 * line, 0.1 * thick}
            }));
  }

  private Mesh block(Point3 at, Direction3 pull) {
    double half = 3.6 * line;
    Vector3 across = level(pull);
    Point3 corner = at.plus(new Vector3(0, 0, -2 * half));
    return Bar.box(
        new Bar.Frame(corner, across, Direction3.UP.vector().cross(across), half),
        2 * half,
        Palette.FITTING);
  }

  private static Vector3 level(Direction3 pull) {
    Vector3 flat = new Vector3(pull.x(), pull.y(), 0);
    return flat.norm() < 1e-6 ? new Vector3(1, 0, 0) : flat.direction().vector();
  }
}
