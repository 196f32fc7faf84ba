// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import boughwright.viewer.scene.Body;
import boughwright.viewer.scene.Box;
import boughwright.viewer.scene.Scene;
import java.util.ArrayList;
import java.util.List;

/** The meshes of a scene on the graphics card. */
final class GpuScene implements AutoCloseable {
  private final List<Part> parts = new ArrayList<>();
  private final Box bounds;

  /** The meshes of one body. */
  private record Part(Body.Role role, GpuMeshes meshes) {}

  GpuScene(Scene scene) {
    bounds = scene.bounds();
    for (Body body : scene.bodies()) {
      parts.add(new Part(body.role(), new GpuMeshes(body.meshes())));
    }
  }

  Box bounds() {
    return bounds;
  }

  /** How many bodies are drawn in some way. */
  int count(Body.Role role) {
    return (int) parts.stream().filter(part -> part.role() == role).count();
  }

  void draw(Body.Role role) {
    parts.stream().filter(part -> part.role() == role).forEach(part -> part.meshes().draw());
  }

  /** Draws one of the bodies that are drawn in some way, counted from 0. */
  void draw(Body.Role role, int number) {
    parts.stream()
        .filter(part -> part.role() == role)
        .skip(number)
        .limit(1)
        .forEach(part -> part.meshes().draw());
  }

  @Override
  public void close() {
    parts.forEach(part -> part.meshes().close());
  }
}
