// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/** The potential energy of a state under loads whose lines are held by tension. */
final class Energy {
  private Energy() {}

  /**
   * Stored energy less the work of the loads [J], up to a constant.
   *
   * @param state the state
   * @param loads the loads
   * @param lines the lines laid in that state
   * @param response workspace
   */
  static double of(RodState state, LoadSet loads, LineForces lines, SectionResponse response) {
    RodMesh mesh = state.mesh;
    double energy = 0;
    for (int e = 0; e < mesh.count; e++) {
      double sum = 0;
      for (int g = 0; g < 2; g++) {
        int k = 6 * e + 3 * g;
        int f = 18 * e + 9 * g;
        mesh.law[2 * e + g].respond(
            state.curvature[k] - mesh.rest[k],
            state.curvature[k + 1] - mesh.rest[k + 1],
            state.curvature[k + 2] - mesh.rest[k + 2],
            response);
        sum +=
            response.energy
                - loads.through[k] * state.frame[f + 2]
                - loads.through[k + 1] * state.frame[f + 5]
                - loads.through[k + 2] * state.frame[f + 8];
      }
      energy += sum * mesh.h[e] / 2;
      if (mesh.offset[e] != null) {
        energy -= Mat3.dot(Mat3.slice(loads.atStart, 3 * e), state.link(e));
      }
    }
    for (LoadSet.NodeLoad load : loads.armed) {
      energy -= Mat3.dot(load.value(), Mat3.apply(state.nodeFrame, 9 * load.node(), load.arm()));
    }
    for (LoadSet.NodeLoad load : loads.moments) {
      energy -= Mat3.dot(load.value(), Mat3.slice(state.turned, 3 * load.node()));
    }
    for (int i = 0; i < lines.lines.size(); i++) {
      energy += lines.tension[i] * lines.length[i];
    }
    return energy;
  }
}
