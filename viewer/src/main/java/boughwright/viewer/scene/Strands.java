// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;

/**
 * The strands of a guy-line from pad to anchor: side by side, twisted round each other, or hanging
 * loose.
 *
 * @param count strands, 1 or more
 * @param radius half the thickness of a strand as drawn [m]
 * @param turns turns of the strands round each other, 0 for none [1]
 * @param inMiddle true if a stick in the middle puts opposite turns into each half
 * @param slack whether the line hangs loose
 */
record Strands(int count, double radius, double turns, boolean inMiddle, boolean slack) {
  private static final int STEPS_PER_TURN = 14;
  private static final int LEAST_STEPS = 24;
  private static final int MOST_STEPS = 600;
  private static final int SIDES = 10;

  /** How far a loose line hangs down, as a share of its length; our choice, to be seen [1]. */
  private static final double SAG = 0.07;

  /** Distance of untwisted strands from their middle, over their radius [1]. */
  private static final double APART = 1.7;

  /** One taut line. */
  static Strands single(double radius) {
    return new Strands(1, radius, 0, false, false);
  }

  /** The meshes, one for each strand. */
  List<Mesh> meshes(Point3 from, Point3 to) {
    List<Mesh> meshes = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      meshes.add(new Tube(radius, SIDES, Palette.FITTING).along(strand(k, from, to)));
    }
    return meshes;
  }

  /** Points on the middle of one strand. */
  List<Point3> strand(int k, Point3 from, Point3 to) {
    Direction3 way = to.minus(from).direction();
    Vector3 across = level(way);
    Vector3 other = way.vector().cross(across);
    double out = count == 1 ? 0 : turns > 0 ? radius : APART * radius;
    List<Point3> points = new ArrayList<>();
    int steps =
        slack || turns > 0
            ? (int) Math.min(MOST_STEPS, LEAST_STEPS + STEPS_PER_TURN * turns * (inMiddle ? 2 : 1))
            : 2;
    for (int n = 0; n <= steps; n++) {
      double u = (double) n / steps;
      double angle = 2 * Math.PI * (twist(u) + (double) k / count);
      Vector3 off = across.times(out * Math.cos(angle)).plus(other.times(out * Math.sin(angle)));
      points.add(from.toward(to, u).plus(off).plus(sag(u, from.distance(to))));
    }
    return points;
  }

  /** Turns at a fraction of the way from the pad: with a stick in the middle they go back again. */
  private double twist(double u) {
    return inMiddle ? turns * (1 - Math.abs(2 * u - 1)) : turns * u;
  }

  private Vector3 sag(double u, double length) {
    return new Vector3(0, 0, slack ? -4 * SAG * length * u * (1 - u) : 0);
  }

  /** A level direction square to a line. */
  static Vector3 level(Direction3 way) {
    Vector3 across = Direction3.UP.vector().cross(way.vector());
    return across.norm() < 1e-6 ? way.anySquare().vector() : across.direction().vector();
  }
}
