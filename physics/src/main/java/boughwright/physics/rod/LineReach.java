// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.Arrays;

/** The elements between the ends of a line and the clamp, the only ones it acts on. */
final class LineReach {
  /** The elements, from the tips to the base. */
  final int[] element;

  /** 1 where the end a pulls through an element, -1 where b does, 0 where they cancel. */
  final int[] side;

  LineReach(RodMesh mesh, LoadSet.MeshLine line) {
    int[] elements = new int[mesh.count];
    int[] sides = new int[mesh.count];
    int a = line.a().node();
    int b = line.b().node();
    int count = 0;
    while (a >= 0 || b >= 0) {
      int e = Math.max(a, b);
      elements[count] = e;
      sides[count++] = (a == e ? 1 : 0) - (b == e ? 1 : 0);
      a = a == e ? mesh.parent[e] : a;
      b = b == e ? mesh.parent[e] : b;
    }
    element = Arrays.copyOf(elements, count);
    side = Arrays.copyOf(sides, count);
  }
}
