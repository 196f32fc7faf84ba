// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.List;
import java.util.Optional;

/** Everything needed to solve on one mesh: rest state, loads, workspaces. */
final class MeshSolver {
  final MeshBuilder.Layout layout;
  final RodMesh mesh;
  final RodState rest;

  /** Where loads are brought on from, under the initial loads, and the tensions there. */
  final RodState start;

  final double[] startTensions;
  final LoadSet initial;
  final List<LoadSet> stages;
  final Newton newton;

  /** Lays a model and the loads of successive stages on a mesh. */
  MeshSolver(MeshBuilder.Layout layout, List<RodLoads> stages) {
    this(layout, stages, Newton.NEGLIGIBLE);
  }

  /** Likewise, going on from a pose. */
  MeshSolver(MeshBuilder.Layout layout, List<RodLoads> stages, RodStart from) {
    this(layout, stages, Newton.NEGLIGIBLE, Optional.of(from));
  }

  /**
   * For answers of a chosen accuracy.
   *
   * @param negligible turns that the iteration may leave out [rad]
   */
  MeshSolver(MeshBuilder.Layout layout, List<RodLoads> stages, double negligible) {
    this(layout, stages, negligible, Optional.empty());
  }

  private MeshSolver(
      MeshBuilder.Layout layout,
      List<RodLoads> stages,
      double negligible,
      Optional<RodStart> from) {
    this.layout = layout;
    mesh = layout.mesh();
    rest = new RodState(mesh);
    for (int e = 0; e < mesh.count; e++) {
      double[] curvature = Mat3.slice(mesh.rest, 6 * e);
      ElementPath.fill(rest, e, curvature, curvature);
    }
    rest.placeNodes();
    LoadSet settled = LoadSet.of(layout, mesh.model.settledUnder());
    if (!mesh.model.settledUnder().equals(RodLoads.NONE)) {
      unload(settled);
    }
    this.stages = stages.stream().map(loads -> LoadSet.of(layout, loads)).toList();
    LoadSet last = this.stages.get(this.stages.size() - 1);
    if (from.isPresent()) {
      initial = LoadSet.of(layout, from.get().loads());
      start = from.get().on(mesh);
      startTensions = from.get().tensions();
    } else {
      initial = settled;
      initial.lines.addAll(LoadSet.relaxed(last, rest).lines);
      start = rest;
      startTensions = new double[last.lines.size()];
    }
    newton = new Newton(mesh, last.lines.size(), negligible);
  }

  /** Takes out of the rest curvature what the given weights bend into the given shape. */
  private void unload(LoadSet weights) {
    LineForces noLines = new LineForces(List.of(), new double[0]);
    ForceSweep forces = new ForceSweep(mesh);
    forces.run(weights, noLines);
    NodeTerms nodes = new NodeTerms(mesh);
    nodes.gather(rest, weights, noLines, forces);
    double[] atEnd = new double[3 * mesh.count];
    double[] atStart = new double[3 * mesh.count];
    Statics.run(rest, forces, nodes, atEnd, atStart);
    for (int e = 0; e < mesh.count; e++) {
      double[][] moments = Statics.atGaussPoints(rest, forces, atEnd, e);
      for (int g = 0; g < 2; g++) {
        double[] m = Mat3.applyTransposed(rest.frame, 18 * e + 9 * g, moments[g]);
        double s = mesh.from[e] + (g == 0 ? RodMesh.GAUSS_1 : RodMesh.GAUSS_2) * mesh.h[e];
        SectionLaw law = mesh.model.spans().get(mesh.span[e]).section().settledAt(s);
        double[] strain = law.strainUnder(m[0], m[1], m[2]);
        for (int k = 0; k < 3; k++) {
          mesh.rest[6 * e + 3 * g + k] -= strain[k];
        }
      }
    }
  }

  /** A state of this mesh from one of the mesh with half as many elements per piece. */
  RodState refined(RodState coarse) {
    RodState fine = new RodState(mesh);
    for (int e = 0; e < coarse.mesh.count; e++) {
      double[] start = ElementPath.through(coarse.curvature, 6 * e, 0);
      double[] middle = ElementPath.through(coarse.curvature, 6 * e, 0.5);
      double[] end = ElementPath.through(coarse.curvature, 6 * e, 1);
      ElementPath.fill(fine, 2 * e, start, middle);
      ElementPath.fill(fine, 2 * e + 1, middle, end);
    }
    fine.placeNodes();
    return fine;
  }
}
