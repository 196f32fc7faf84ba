// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;

/**
 * A smooth round wire along points, closed at both ends.
 *
 * @param radius half its thickness [m]
 * @param sides corners of a ring, 3 or more
 * @param colour its colour
 */
record Tube(double radius, int sides, Colour colour) {
  /** Points nearer to each other than this are one [m]. */
  private static final double SAME = 1e-9;

  /**
   * The wire.
   *
   * @param way points on its middle, of which two differ [m, scene frame]
   */
  Mesh along(List<Point3> way) {
    List<Point3> points = apart(way);
    MeshBuilder mesh = new MeshBuilder();
    Direction3 before = direction(points, 0);
    Vector3 across = before.anySquare().vector();
    int first = end(mesh, points.get(0), before.opposite());
    int ring = ring(mesh, points.get(0), before, across);
    fan(mesh, first, ring, true);
    for (int n = 1; n < points.size(); n++) {
      Direction3 here = direction(points, n);
      across = Rotation.between(before, here).turn(across);
      int next = ring(mesh, points.get(n), here, across);
      mesh.band(ring, next, sides);
      ring = next;
      before = here;
    }
    int last = end(mesh, points.get(points.size() - 1), before);
    fan(mesh, last, ring, false);
    return mesh.build();
  }

  private static List<Point3> apart(List<Point3> way) {
    List<Point3> points = new ArrayList<>();
    for (Point3 point : way) {
      if (points.isEmpty() || points.get(points.size() - 1).distance(point) > SAME) {
        points.add(point);
      }
    }
    return points;
  }

  private static Direction3 direction(List<Point3> points, int n) {
    Point3 from = points.get(Math.max(0, n - 1));
    Point3 to = points.get(Math.min(points.size() - 1, n + 1));
    Vector3 step = to.minus(from);
    return step.norm() > 0 ? step.direction() : points.get(n).minus(from).direction();
  }

  private int ring(MeshBuilder mesh, Point3 at, Direction3 way, Vector3 across) {
    Vector3 other = way.vector().cross(across);
    int first = -1;
    for (int j = 0; j < sides; j++) {
      double angle = 2 * Math.PI * j / sides;
      Vector3 out = across.times(Math.cos(angle)).plus(other.times(Math.sin(angle)));
      int v = mesh.vertex(at.plus(out.times(radius)), out, colour, MeshBuilder.Grain.NONE);
      first = j == 0 ? v : first;
    }
    return first;
  }

  /** A flat cone closes the wire, so that its end is seen as cut. */
  private int end(MeshBuilder mesh, Point3 at, Direction3 facing) {
    Point3 tip = at.plus(facing.times(0.3 * radius));
    return mesh.vertex(tip, facing.vector(), colour, MeshBuilder.Grain.NONE);
  }

  private void fan(MeshBuilder mesh, int centre, int ring, boolean facingBack) {
    for (int j = 0; j < sides; j++) {
      int next = (j + 1) % sides;
      mesh.triangle(centre, ring + (facingBack ? next : j), ring + (facingBack ? j : next));
    }
  }
}
