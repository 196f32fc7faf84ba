// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.Arrays;

/**
 * What acts at nodes through rigid arms: pads, rigid links, moments; as terms of the first and
 * second variation. A workspace.
 *
 * <p>A force f on an arm a does, under a turn psi, the work psi . (a x f) + f . (psi x (psi x a)) /
 * 2 to second order. So it adds f x a to the first variation of the energy and (f . a) I - (f a^T +
 * a f^T) / 2 to the second.
 */
final class NodeTerms {
  private final RodMesh mesh;

  /** Terms of the second variation, shape (count, 6), kept as in {@link Sym3}. */
  final double[] block;

  /** Terms of the first variation [N m], shape (count, 3). */
  final double[] gradient;

  NodeTerms(RodMesh mesh) {
    this.mesh = mesh;
    block = new double[6 * mesh.count];
    gradient = new double[3 * mesh.count];
  }

  void gather(RodState state, LoadSet loads, LineForces lines, ForceSweep forces) {
    Arrays.fill(block, 0);
    Arrays.fill(gradient, 0);
    for (int e = 0; e < mesh.count; e++) {
      if (mesh.offset[e] != null && mesh.parent[e] >= 0) {
        add(mesh.parent[e], state.link(e), Mat3.slice(forces.atStart, 3 * e));
      }
    }
    for (LoadSet.NodeLoad load : loads.armed) {
      add(load.node(), Mat3.apply(state.nodeFrame, 9 * load.node(), load.arm()), load.value());
    }
    for (LoadSet.NodeLoad load : loads.moments) {
      for (int k = 0; k < 3; k++) {
        gradient[3 * load.node() + k] -= load.value()[k];
      }
    }
    for (int i = 0; i < lines.lines.size(); i++) {
      double[] d = lines.direction[i];
      double t = lines.tension[i];
      LoadSet.MeshLine line = lines.lines.get(i);
      add(line.a().node(), lines.arm[2 * i], new double[] {t * d[0], t * d[1], t * d[2]});
      add(line.b().node(), lines.arm[2 * i + 1], new double[] {-t * d[0], -t * d[1], -t * d[2]});
    }
  }

  private void add(int node, double[] a, double[] f) {
    if (node < 0) {
      return;
    }
    int g = 3 * node;
    gradient[g] -= a[1] * f[2] - a[2] * f[1];
    gradient[g + 1] -= a[2] * f[0] - a[0] * f[2];
    gradient[g + 2] -= a[0] * f[1] - a[1] * f[0];
    double along = Mat3.dot(a, f);
    int b = 6 * node;
    block[b] += along - a[0] * f[0];
    block[b + 1] -= 0.5 * (a[0] * f[1] + a[1] * f[0]);
    block[b + 2] -= 0.5 * (a[0] * f[2] + a[2] * f[0]);
    block[b + 3] += along - a[1] * f[1];
    block[b + 4] -= 0.5 * (a[1] * f[2] + a[2] * f[1]);
    block[b + 5] += along - a[2] * f[2];
  }
}
