// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Vector3;
import java.util.Objects;

/**
 * Where a load is brought on from, instead of from rest.
 *
 * @param solution a pose of the same spans, whose sections may have answered otherwise
 * @param loads what it was under; its lines have the same ends in the same order
 */
public record RodStart(RodSolution solution, RodLoads loads) {
  /**
   * Part of the strains that the iteration starts without [1]. Sections that remember the pose are
   * softer beyond it than before it; loads mostly come down from it.
   */
  private static final double LET_GO = 1e-3;

  public RodStart {
    Objects.requireNonNull(solution, "solution");
    Objects.requireNonNull(loads, "loads");
  }

  /** The state of a mesh that has the strains of the pose. */
  RodState on(RodMesh mesh) {
    RodState state = new RodState(mesh);
    for (int e = 0; e < mesh.count; e++) {
      double[] curvature = new double[6];
      for (int g = 0; g < 2; g++) {
        double x = g == 0 ? RodMesh.GAUSS_1 : RodMesh.GAUSS_2;
        double s = mesh.from[e] + x * mesh.h[e];
        Vector3 strain = solution.pose().section(mesh.span[e], s).strain().times(1 - LET_GO);
        curvature[3 * g] = mesh.rest[6 * e + 3 * g] + strain.x();
        curvature[3 * g + 1] = mesh.rest[6 * e + 3 * g + 1] + strain.y();
        curvature[3 * g + 2] = mesh.rest[6 * e + 3 * g + 2] + strain.z();
      }
      ElementPath.fill(
          state, e, ElementPath.through(curvature, 0, 0), ElementPath.through(curvature, 0, 1));
    }
    state.placeNodes();
    return state;
  }

  double[] tensions() {
    return solution.lines().stream().mapToDouble(RodSolution.LineState::tension).toArray();
  }
}
