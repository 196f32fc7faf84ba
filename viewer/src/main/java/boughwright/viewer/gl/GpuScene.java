// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import boughwright.viewer.scene.Body;
import boughwright.viewer.scene.Box;
import boughwright.viewer.scene.Mesh;
import boughwright.viewer.scene.Scene;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The meshes of a scene on the graphics card. */
final class GpuScene implements AutoCloseable {
  private final Map<Body.Role, GpuMeshes> meshes = new EnumMap<>(Body.Role.class);
  private final Box bounds;

  GpuScene(Scene scene) {
    bounds = scene.bounds();
    for (Body.Role role : Body.Role.values()) {
      List<Mesh> all =
          scene.bodies().stream()
              .filter(body -> body.role() == role)
              .flatMap(body -> body.meshes().stream())
              .toList();
      meshes.put(role, new GpuMeshes(all));
    }
  }

  Box bounds() {
    return bounds;
  }

  void draw(Body.Role role) {
    meshes.get(role).draw();
  }

  @Override
  public void close() {
    meshes.values().forEach(GpuMeshes::close);
  }
}
