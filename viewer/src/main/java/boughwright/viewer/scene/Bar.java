// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/** Straight boxes and their edges. */
final class Bar {
  /** Corners of a face, as signs along the two directions of its frame. */
  private static final int[][] CORNERS = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};

  private Bar() {}

  /**
   * A square that a box stands on.
   *
   * @param middle its middle [m, scene frame]
   * @param across a direction of its sides, length one
   * @param other the other direction, length one, so that across, other, up are right-handed
   * @param half half the length of its sides [m]
   */
  record Frame(Point3 middle, Vector3 across, Vector3 other, double half) {
    Point3 corner(int n) {
      return middle
          .plus(across.times(half * CORNERS[n][0]))
          .plus(other.times(half * CORNERS[n][1]));
    }
  }

  /** A box on a square. */
  static Mesh box(Frame foot, double height, Colour colour) {
    Vector3 up = foot.across().cross(foot.other()).times(height);
    Point3[] corners = new Point3[8];
    for (int n = 0; n < 4; n++) {
      corners[n] = foot.corner(n);
      corners[n + 4] = corners[n].plus(up);
    }
    return box(corners, colour);
  }

  /**
   * A box.
   *
   * @param c its lower corners, counter-clockwise from above, then the upper ones above them
   */
  static Mesh box(Point3[] c, Colour colour) {
    MeshBuilder mesh = new MeshBuilder();
    face(mesh, colour, c[3], c[2], c[1], c[0]);
    face(mesh, colour, c[4], c[5], c[6], c[7]);
    for (int n = 0; n < 4; n++) {
      int next = (n + 1) % 4;
      face(mesh, colour, c[n], c[next], c[next + 4], c[n + 4]);
    }
    return mesh.build();
  }

  private static void face(MeshBuilder mesh, Colour colour, Point3... c) {
    Vector3 normal = c[1].minus(c[0]).cross(c[3].minus(c[0])).direction().vector();
    int first = mesh.vertex(c[0], normal, colour, MeshBuilder.Grain.NONE);
    for (int n = 1; n < 4; n++) {
      mesh.vertex(c[n], normal, colour, MeshBuilder.Grain.NONE);
    }
    mesh.triangle(first, first + 1, first + 2);
    mesh.triangle(first, first + 2, first + 3);
  }
}
