// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Cuts a rod model into elements: nodes at every place that carries a load, and as many elements
 * between as the taper and the length ask for. Parts beyond the last load stay at rest and get no
 * elements.
 */
final class MeshBuilder {
  /** Elements along the longest loaded path, at the coarsest level. */
  private static final double ELEMENTS_ALONG = 4;

  /** Largest ratio of radii over one element, at the coarsest level. */
  private static final double RADIUS_RATIO = 1.5;

  private final RodModel model;
  private final List<TreeSet<Double>> nodes = new ArrayList<>();
  private final double[] loadedTo;
  private final double elementsAlong;

  MeshBuilder(RodModel model, List<RodLoads> loads) {
    this(model, loads, ELEMENTS_ALONG);
  }

  /**
   * For meshes of a chosen fineness.
   *
   * @param elementsAlong elements along the longest loaded path, at the coarsest level
   */
  MeshBuilder(RodModel model, List<RodLoads> loads, double elementsAlong) {
    this.model = model;
    this.elementsAlong = elementsAlong;
    int count = model.spans().size();
    loadedTo = new double[count];
    Arrays.fill(loadedTo, -1);
    for (int i = 0; i < count; i++) {
      nodes.add(new TreeSet<>());
    }
    visit(model.settledUnder());
    loads.forEach(this::visit);
    for (int i = count - 1; i >= 0; i--) {
      int parent = model.spans().get(i).parent();
      if (loadedTo[i] >= 0 && parent >= 0) {
        loadWhole(parent);
      }
    }
  }

  private void visit(RodLoads loads) {
    loads.forces().forEach(force -> visit(force.at()));
    loads.moments().forEach(moment -> visit(moment.at()));
    loads.weights().forEach(weight -> loadWhole(weight.span()));
    for (RodLine line : loads.lines()) {
      visit(line.at());
      if (line.other() instanceof RodLine.MovingEnd end) {
        visit(end.place());
      }
    }
  }

  private void loadWhole(int span) {
    visit(RodPlace.onAxis(span, model.spans().get(span).length()));
  }

  private void visit(RodPlace place) {
    if (place.span() >= nodes.size()
        || place.s() > model.spans().get(place.span()).length() * (1 + 1e-12)) {
      throw new IllegalArgumentException("no such place: " + place);
    }
    loadedTo[place.span()] = Math.max(loadedTo[place.span()], place.s());
    nodes.get(place.span()).add(place.s());
  }

  /**
   * The mesh.
   *
   * @param perPiece elements per piece of the coarsest mesh: 1, 2, 4 ...
   */
  Layout build(int perPiece) {
    List<RodMesh.Stretch> elements = new ArrayList<>();
    int[] lastNode = new int[nodes.size()];
    List<int[]> parents = new ArrayList<>();
    double coarse = longestPath() / elementsAlong;
    for (int i = 0; i < nodes.size(); i++) {
      int parent = model.spans().get(i).parent();
      int node = parent < 0 ? RodSpan.CLAMP : lastNode[parent];
      double from = 0;
      for (double to : nodes.get(i)) {
        if (to > from) {
          int pieces = perPiece * pieces(i, from, to, coarse);
          for (int k = 0; k < pieces; k++) {
            double a = from + (to - from) * k / pieces;
            double b = k == pieces - 1 ? to : from + (to - from) * (k + 1) / pieces;
            parents.add(new int[] {node, a == 0 ? 1 : 0});
            node = elements.size();
            elements.add(new RodMesh.Stretch(i, a, b));
          }
          from = to;
        }
      }
      lastNode[i] = node;
    }
    RodMesh mesh = new RodMesh(model, elements.size());
    for (int e = 0; e < elements.size(); e++) {
      mesh.set(e, parents.get(e)[0], elements.get(e), parents.get(e)[1] == 1);
    }
    return new Layout(mesh, loadedTo.clone());
  }

  private int pieces(int span, double from, double to, double coarse) {
    double byLength = (to - from) / coarse;
    SectionLine sections = model.spans().get(span).section();
    double ratio = sections.at(from).stiffnessAtRest() / sections.at(to).stiffnessAtRest();
    double byTaper = Math.abs(Math.log(ratio)) / 4 / Math.log(RADIUS_RATIO);
    return (int) Math.max(1, Math.ceil(Math.max(byLength, byTaper) - 1e-9));
  }

  /** Length of the longest path from the clamp to a load [m]. */
  double longestPath() {
    double[] reach = new double[nodes.size()];
    double longest = 0;
    for (int i = 0; i < nodes.size(); i++) {
      int parent = model.spans().get(i).parent();
      double before = parent < 0 ? 0 : reach[parent];
      reach[i] = before + model.spans().get(i).length();
      if (loadedTo[i] > 0) {
        longest = Math.max(longest, before + loadedTo[i]);
      }
    }
    return longest > 0 ? longest : 1;
  }

  /**
   * A mesh and how much of each span it covers.
   *
   * @param mesh the mesh
   * @param loadedTo how far from its start each span carries load; negative for not at all [m],
   *     shape (spans)
   */
  record Layout(RodMesh mesh, double[] loadedTo) {
    /**
     * The node at a place of the loaded part, or the clamp.
     *
     * @return the element that ends there
     */
    int nodeAt(int span, double s) {
      if (s == 0) {
        int parent = mesh.model.spans().get(span).parent();
        return parent < 0 ? RodSpan.CLAMP : nodeAt(parent, mesh.model.spans().get(parent).length());
      }
      int best = RodSpan.CLAMP;
      double nearest = Double.POSITIVE_INFINITY;
      for (int e = 0; e < mesh.count; e++) {
        double away = Math.abs(mesh.from[e] + mesh.h[e] - s);
        if (mesh.span[e] == span && away < nearest) {
          nearest = away;
          best = e;
        }
      }
      return best;
    }
  }
}
