// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.Arrays;

/**
 * The forces that pass through a tree of rods; a workspace.
 *
 * <p>Force and moment at a section are what the part beyond it exerts through it on the part toward
 * the base.
 */
final class ForceSweep {
  private final RodMesh mesh;

  /** Force through the Gauss points, dead loads and lines [N, space], shape (count, 2, 3). */
  final double[] through;

  /** Force through the start of each element [N, space], shape (count, 3). */
  final double[] atStart;

  /** Force through the end of each element [N, space], shape (count, 3). */
  final double[] atNode;

  ForceSweep(RodMesh mesh) {
    this.mesh = mesh;
    through = new double[6 * mesh.count];
    atStart = new double[3 * mesh.count];
    atNode = new double[3 * mesh.count];
  }

  /** Sums the loads from the tips toward the base. */
  void run(LoadSet loads, LineForces lines) {
    Arrays.fill(atNode, 0);
    for (int i = 0; i < lines.lines.size(); i++) {
      pull(lines.lines.get(i).a().node(), lines.direction[i], lines.tension[i]);
      pull(lines.lines.get(i).b().node(), lines.direction[i], -lines.tension[i]);
    }
    for (int e = mesh.count - 1; e >= 0; e--) {
      double x = atNode[3 * e];
      double y = atNode[3 * e + 1];
      double z = atNode[3 * e + 2];
      int g = 6 * e;
      through[g] = loads.through[g] + x;
      through[g + 1] = loads.through[g + 1] + y;
      through[g + 2] = loads.through[g + 2] + z;
      through[g + 3] = loads.through[g + 3] + x;
      through[g + 4] = loads.through[g + 4] + y;
      through[g + 5] = loads.through[g + 5] + z;
      atStart[3 * e] = loads.atStart[3 * e] + x;
      atStart[3 * e + 1] = loads.atStart[3 * e + 1] + y;
      atStart[3 * e + 2] = loads.atStart[3 * e + 2] + z;
      atNode[3 * e] += loads.atEnd[3 * e];
      atNode[3 * e + 1] += loads.atEnd[3 * e + 1];
      atNode[3 * e + 2] += loads.atEnd[3 * e + 2];
      int p = 3 * mesh.parent[e];
      if (p >= 0) {
        atNode[p] += x;
        atNode[p + 1] += y;
        atNode[p + 2] += z;
      }
    }
  }

  private void pull(int node, double[] direction, double tension) {
    if (node >= 0) {
      atNode[3 * node] += tension * direction[0];
      atNode[3 * node + 1] += tension * direction[1];
      atNode[3 * node + 2] += tension * direction[2];
    }
  }
}
