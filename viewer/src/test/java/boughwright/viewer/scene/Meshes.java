// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Looks at meshes from outside, for tests. */
final class Meshes {
  private Meshes() {}

  static Point3 position(Mesh mesh, int vertex) {
    return new Point3(mesh.part(vertex, 0), mesh.part(vertex, 1), mesh.part(vertex, 2));
  }

  /** Edges that are not passed once each way, corners at the same place taken as one. */
  static long openEdges(Mesh mesh) {
    Map<List<Float>, Integer> places = new HashMap<>();
    Map<Long, Integer> balance = new HashMap<>();
    Map<Long, Integer> uses = new HashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        long a = place(mesh, mesh.corner(t, c), places);
        long b = place(mesh, mesh.corner(t, (c + 1) % 3), places);
        if (a != b) {
          long edge = Math.min(a, b) << 32 | Math.max(a, b);
          balance.merge(edge, a < b ? 1 : -1, Integer::sum);
          uses.merge(edge, 1, Integer::sum);
        }
      }
    }
    return uses.entrySet().stream()
        .filter(use -> use.getValue() != 2 || balance.get(use.getKey()) != 0)
        .count();
  }

  private static int place(Mesh mesh, int vertex, Map<List<Float>, Integer> places) {
    List<Float> key = List.of(mesh.part(vertex, 0), mesh.part(vertex, 1), mesh.part(vertex, 2));
    return places.computeIfAbsent(key, k -> places.size());
  }

  /** Enclosed volume, positive when triangles are seen counter-clockwise from outside [m3]. */
  static double volume(Mesh mesh) {
    double sum = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vector3 a = position(mesh, mesh.corner(t, 0)).minus(Point3.ORIGIN);
      Vector3 b = position(mesh, mesh.corner(t, 1)).minus(Point3.ORIGIN);
      Vector3 c = position(mesh, mesh.corner(t, 2)).minus(Point3.ORIGIN);
      sum += a.dot(b.cross(c)) / 6;
    }
    return sum;
  }
}
