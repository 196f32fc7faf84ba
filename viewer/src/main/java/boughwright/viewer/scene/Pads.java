// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.List;

/** Pads between a line and the bark, as long as they are: all round, or on one side. */
final class Pads {
  private static final int COLUMNS = 28;

  /** Half the part of the branch that a pad on one side goes round [rad]. */
  private static final double REACH = Math.toRadians(105);

  /** How deep under the bark its edge lies, as a share of the radius, so that no gap is seen. */
  private static final double UNDER = 0.012;

  private final double thickness;
  private final Colour colour;

  /**
   * @param thickness thickness to draw pads with [m]
   * @param colour their colour
   */
  Pads(double thickness, Colour colour) {
    this.thickness = thickness;
    this.colour = colour;
  }

  /** A pad all round a branch. */
  Mesh sleeve(List<Station> stations) {
    return mesh(stations, stations.get(0).direction().anySquare().vector(), Math.PI);
  }

  /**
   * A pad on one side of a branch.
   *
   * @param outward from the axis to the middle of the pad, at the first station
   */
  Mesh patch(List<Station> stations, Vector3 outward) {
    return patch(stations, outward, REACH);
  }

  /**
   * A strip on one side of a branch.
   *
   * @param outward from the axis to its middle, at the first station
   * @param reach how far it goes round the branch to each side [rad]
   */
  Mesh patch(List<Station> stations, Vector3 outward, double reach) {
    return mesh(stations, outward, reach);
  }

  private Mesh mesh(List<Station> stations, Vector3 outward, double reach) {
    MeshBuilder mesh = new MeshBuilder();
    int outer = grid(mesh, stations, new Side(outward, reach, false));
    int inner = grid(mesh, stations, new Side(outward, reach, true));
    int row = COLUMNS + 1;
    for (int n = 0; n + 1 < stations.size(); n++) {
      for (int j = 0; j < COLUMNS; j++) {
        int a = n * row + j;
        int b = a + row;
        mesh.triangle(outer + a, outer + a + 1, outer + b + 1);
        mesh.triangle(outer + a, outer + b + 1, outer + b);
        mesh.triangle(inner + a, inner + b, inner + a + 1);
        mesh.triangle(inner + a + 1, inner + b, inner + b + 1);
      }
    }
    return mesh.build();
  }

  /** One face of a pad: the middle of it, how far it reaches each way [rad], which face. */
  private record Side(Vector3 outward, double reach, boolean inner) {}

  private int grid(MeshBuilder mesh, List<Station> stations, Side side) {
    Vector3 outward = square(side.outward(), stations.get(0));
    int first = -1;
    for (int n = 0; n < stations.size(); n++) {
      Station station = stations.get(n);
      if (n > 0) {
        outward =
            Rotation.between(stations.get(n - 1).direction(), station.direction()).turn(outward);
      }
      boolean edgeRow = n == 0 || n == stations.size() - 1;
      for (int j = 0; j <= COLUMNS; j++) {
        boolean whole = side.reach() == Math.PI;
        double angle = side.reach() * (2.0 * (whole ? j % COLUMNS : j) / COLUMNS - 1);
        boolean edge = edgeRow || !whole && (j == 0 || j == COLUMNS);
        double under = station.radius() * (1 - UNDER);
        double radius = side.inner() || edge ? under : station.radius() + thickness;
        Vector3 out = Rotation.about(station.direction(), angle).turn(outward);
        Point3 at = station.point().plus(out.times(radius));
        Vector3 normal = side.inner() ? out.times(-1) : out;
        int v = mesh.vertex(at, normal, colour, MeshBuilder.Grain.NONE);
        first = first < 0 ? v : first;
      }
    }
    return first;
  }

  private static Vector3 square(Vector3 outward, Station station) {
    double along = outward.dot(station.direction().vector());
    Vector3 flat = outward.minus(station.direction().times(along));
    return flat.norm() < 1e-9
        ? station.direction().anySquare().vector()
        : flat.direction().vector();
  }
}
