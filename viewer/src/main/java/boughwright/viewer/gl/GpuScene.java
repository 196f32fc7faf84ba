// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import boughwright.viewer.scene.Body;
import boughwright.viewer.scene.Box;
import boughwright.viewer.scene.Mesh;
import boughwright.viewer.scene.Scene;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The meshes of a scene on the graphics card. Those that the scene before had too stay where they
 * are.
 */
final class GpuScene implements AutoCloseable {
  private final List<Part> parts = new ArrayList<>();
  private Map<Mesh, GpuMesh> meshes = new IdentityHashMap<>();
  private Scene scene;

  /** The meshes of one body. */
  private record Part(Body.Role role, List<GpuMesh> meshes) {}

  /** Brings a scene onto the card in place of the one before. */
  void show(Scene next) {
    if (scene == next) {
      return;
    }
    Map<Mesh, GpuMesh> before = meshes;
    meshes = new IdentityHashMap<>();
    parts.clear();
    for (Body body : next.bodies()) {
      List<GpuMesh> part = new ArrayList<>();
      for (Mesh mesh : body.meshes()) {
        GpuMesh there = meshes.get(mesh);
        if (there == null) {
          GpuMesh old = before.remove(mesh);
          there = old == null ? new GpuMesh(mesh) : old;
          meshes.put(mesh, there);
        }
        part.add(there);
      }
      parts.add(new Part(body.role(), part));
    }
    before.values().forEach(GpuMesh::close);
    scene = next;
  }

  Box bounds() {
    return scene.bounds();
  }

  /** How many bodies are drawn in some way. */
  int count(Body.Role role) {
    return (int) parts.stream().filter(part -> part.role() == role).count();
  }

  void draw(Body.Role role) {
    parts.stream()
        .filter(part -> part.role() == role)
        .forEach(part -> part.meshes().forEach(GpuMesh::draw));
  }

  /** Draws one of the bodies that are drawn in some way, counted from 0. */
  void draw(Body.Role role, int number) {
    parts.stream()
        .filter(part -> part.role() == role)
        .skip(number)
        .limit(1)
        .forEach(part -> part.meshes().forEach(GpuMesh::draw));
  }

  @Override
  public void close() {
    meshes.values().forEach(GpuMesh::close);
    meshes.clear();
    parts.clear();
    scene = null;
  }
}
