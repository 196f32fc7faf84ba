// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.geometry.Direction3;
import boughwright.viewer.scene.Body;
import boughwright.viewer.scene.Mesh;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.ViewAngle;

/**
 * How far a scene reaches from the root base, as seen in a view.
 *
 * @param left to the left, negative [m]
 * @param right to the right [m]
 * @param low downward, negative [m]
 * @param high upward [m]
 */
record Extent(double left, double right, double low, double high) {

  static Extent of(Scene scene, ViewAngle angle) {
    Direction3 right = angle.right();
    Direction3 up = angle.up();
    double[] reach = {0, 0, 0, 0};
    for (Body body : scene.bodies()) {
      for (Mesh mesh : body.meshes()) {
        for (int v = 0; v < mesh.vertexCount(); v++) {
          double across = along(mesh, v, scene, right);
          double upward = along(mesh, v, scene, up);
          reach[0] = Math.min(reach[0], across);
          reach[1] = Math.max(reach[1], across);
          reach[2] = Math.min(reach[2], upward);
          reach[3] = Math.max(reach[3], upward);
        }
      }
    }
    return new Extent(reach[0], reach[1], reach[2], reach[3]);
  }

  private static double along(Mesh mesh, int v, Scene scene, Direction3 way) {
    return (mesh.part(v, 0) - scene.base().x()) * way.x()
        + (mesh.part(v, 1) - scene.base().y()) * way.y()
        + (mesh.part(v, 2) - scene.base().z()) * way.z();
  }

  double width() {
    return right - left;
  }
}
