// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.*;

import boughwright.viewer.scene.Mesh;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import org.lwjgl.system.MemoryUtil;

/** A mesh on the graphics card. */
final class GpuMesh implements AutoCloseable {
  private static final int[] PARTS = {3, 3, 3, 4};

  private final int array = glGenVertexArrays();
  private final int vertices = glGenBuffers();
  private final int corners = glGenBuffers();
  private final int cornerCount;

  GpuMesh(Mesh mesh) {
    cornerCount = 3 * mesh.triangleCount();
    FloatBuffer vertexData =
        MemoryUtil.memAllocFloat(Math.max(1, mesh.vertexCount() * Mesh.STRIDE));
    IntBuffer cornerData = MemoryUtil.memAllocInt(Math.max(1, cornerCount));
    try {
      mesh.copyVertices(vertexData);
      mesh.copyTriangles(cornerData);
      upload(vertexData.flip(), cornerData.flip());
    } finally {
      MemoryUtil.memFree(vertexData);
      MemoryUtil.memFree(cornerData);
    }
  }

  private void upload(FloatBuffer vertexData, IntBuffer cornerData) {
    glBindVertexArray(array);
    glBindBuffer(GL_ARRAY_BUFFER, vertices);
    glBufferData(GL_ARRAY_BUFFER, vertexData, GL_STATIC_DRAW);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, corners);
    glBufferData(GL_ELEMENT_ARRAY_BUFFER, cornerData, GL_STATIC_DRAW);
    int offset = 0;
    for (int n = 0; n < PARTS.length; n++) {
      glEnableVertexAttribArray(n);
      glVertexAttribPointer(
          n, PARTS[n], GL_FLOAT, false, Mesh.STRIDE * Float.BYTES, (long) offset * Float.BYTES);
      offset += PARTS[n];
    }
    glBindVertexArray(0);
  }

  /** Corners of its triangles. */
  int corners() {
    return cornerCount;
  }

  void draw() {
    if (cornerCount > 0) {
      glBindVertexArray(array);
      glDrawElements(GL_TRIANGLES, cornerCount, GL_UNSIGNED_INT, 0);
      glBindVertexArray(0);
    }
  }

  @Override
  public void close() {
    glDeleteVertexArrays(array);
    glDeleteBuffers(vertices);
    glDeleteBuffers(corners);
  }
}
