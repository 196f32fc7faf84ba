// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.glFinish;

import boughwright.viewer.scene.Body;
import boughwright.viewer.scene.Box;
import boughwright.viewer.scene.Mesh;
import boughwright.viewer.scene.Scene;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * The meshes of a scene on the graphics card. Those that the scene before had too stay where they
 * are.
 */
final class GpuScene implements AutoCloseable {
  /** Corners of triangles between two looks at whether to give up. */
  private static final int STRETCH = 150_000;

  private final List<Part> parts = new ArrayList<>();
  private Map<Mesh, GpuMesh> meshes = new IdentityHashMap<>();
  private Scene scene;
  private BooleanSupplier stop = () -> false;
  private boolean givenUp;
  private int since;

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

  /**
   * From now on what is drawn is brought to an end again and again, and left undrawn from there on
   * where this says so.
   */
  void giveUpWhen(BooleanSupplier asked) {
    stop = asked;
    givenUp = false;
    since = 0;
  }

  boolean isGivenUp() {
    return givenUp;
  }

  private void draw(Part part) {
    for (GpuMesh mesh : part.meshes()) {
      if (since > STRETCH && !givenUp) {
        since = 0;
        glFinish();
        givenUp = stop.getAsBoolean();
      }
      if (givenUp) {
        return;
      }
      mesh.draw();
      since += mesh.corners();
    }
  }

  /** How many bodies are drawn in some way. */
  int count(Body.Role role) {
    return (int) parts.stream().filter(part -> part.role() == role).count();
  }

  void draw(Body.Role role) {
    parts.stream().filter(part -> part.role() == role).forEach(this::draw);
  }

  /** Draws one of the bodies that are drawn in some way, counted from 0. */
  void draw(Body.Role role, int number) {
    parts.stream().filter(part -> part.role() == role).skip(number).limit(1).forEach(this::draw);
  }

  @Override
  public void close() {
    meshes.values().forEach(GpuMesh::close);
    meshes.clear();
    parts.clear();
    scene = null;
  }
}
