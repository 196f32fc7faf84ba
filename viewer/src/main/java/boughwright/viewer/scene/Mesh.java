// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.Optional;

/**
 * Triangles with a normal and a colour at every corner, seen counter-clockwise from outside.
 * Immutable.
 */
public final class Mesh {
  /** Floats per vertex: position 3, normal 3, colour 3, grain 4. */
  public static final int STRIDE = 13;

  private final float[] vertices;
  private final int[] triangles;

  /** Worked out when first asked for; the same whoever does it. */
  private Optional<Box> bounds;

  Mesh(float[] vertices, int[] triangles) {
    this.vertices = vertices;
    this.triangles = triangles;
  }

  public int vertexCount() {
    return vertices.length / STRIDE;
  }

  public int triangleCount() {
    return triangles.length / 3;
  }

  /**
   * One number of a vertex.
   *
   * @param vertex index of the vertex
   * @param part 0 to 2 position [m, scene frame], 3 to 5 normal, 6 to 8 colour (sRGB), 9 to 11 a
   *     place on the bark that stays with the wood [m], 12 how much open sky the place sees, 0 to 1
   */
  public float part(int vertex, int part) {
    return vertices[vertex * STRIDE + part];
  }

  /** The box round it; empty where it has no vertex. */
  public Optional<Box> bounds() {
    if (bounds == null) {
      bounds = boxed();
    }
    return bounds;
  }

  private Optional<Box> boxed() {
    if (vertices.length == 0) {
      return Optional.empty();
    }
    float[] low = {vertices[0], vertices[1], vertices[2]};
    float[] high = low.clone();
    for (int from = 0; from < vertices.length; from += STRIDE) {
      for (int n = 0; n < 3; n++) {
        low[n] = Math.min(low[n], vertices[from + n]);
        high[n] = Math.max(high[n], vertices[from + n]);
      }
    }
    return Optional.of(
        new Box(new Point3(low[0], low[1], low[2]), new Point3(high[0], high[1], high[2])));
  }

  /** The same mesh in one colour. */
  Mesh tinted(Colour colour) {
    float[] tinted = vertices.clone();
    for (int from = 6; from < tinted.length; from += STRIDE) {
      tinted[from] = (float) colour.red();
      tinted[from + 1] = (float) colour.green();
      tinted[from + 2] = (float) colour.blue();
    }
    return new Mesh(tinted, triangles);
  }

  /** Index of a corner of a triangle. */
  public int corner(int triangle, int which) {
    return triangles[triangle * 3 + which];
  }

  /** Copies all vertices, {@link #STRIDE} floats each. */
  public void copyVertices(FloatBuffer into) {
    into.put(vertices);
  }

  /** Copies the corners, three indices for each triangle. */
  public void copyTriangles(IntBuffer into) {
    into.put(triangles);
  }
}
