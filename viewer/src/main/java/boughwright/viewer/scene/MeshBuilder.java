// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Arrays;

/** Gathers vertices and triangles; used inside one method and then thrown away. */
final class MeshBuilder {
  private float[] vertices = new float[1024 * Mesh.STRIDE];
  private int[] triangles = new int[4096];
  private int vertexCount;
  private int indexCount;

  /** Where the bark of a vertex lies while nothing is bent, and how much sky it sees. */
  record Grain(double x, double y, double z, double sky) {
    static final Grain NONE = new Grain(0, 0, 0, 1);
  }

  /** Adds a vertex and gives its index. */
  int vertex(Point3 at, Vector3 normal, Colour colour, Grain grain) {
    if ((vertexCount + 1) * Mesh.STRIDE > vertices.length) {
      vertices = Arrays.copyOf(vertices, vertices.length * 2);
    }
    double[] parts = {
      at.x(),
      at.y(),
      at.z(),
      normal.x(),
      normal.y(),
      normal.z(),
      colour.red(),
      colour.green(),
      colour.blue(),
      grain.x(),
      grain.y(),
      grain.z(),
      grain.sky()
    };
    int from = vertexCount * Mesh.STRIDE;
    for (int i = 0; i < parts.length; i++) {
      vertices[from + i] = (float) parts[i];
    }
    return vertexCount++;
  }

  void triangle(int a, int b, int c) {
    if (indexCount + 3 > triangles.length) {
      triangles = Arrays.copyOf(triangles, triangles.length * 2);
    }
    triangles[indexCount++] = a;
    triangles[indexCount++] = b;
    triangles[indexCount++] = c;
  }

  /** Joins two rings of vertices given by their first index, the second one further along. */
  void band(int first, int second, int sides) {
    for (int j = 0; j < sides; j++) {
      int next = (j + 1) % sides;
      triangle(first + j, first + next, second + next);
      triangle(first + j, second + next, second + j);
    }
  }

  Mesh build() {
    return new Mesh(
        Arrays.copyOf(vertices, vertexCount * Mesh.STRIDE), Arrays.copyOf(triangles, indexCount));
  }
}
