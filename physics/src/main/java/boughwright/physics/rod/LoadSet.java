// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;

/**
 * Loads put on a mesh, in the form the sweeps need. Dead loads are held as the force that passes
 * through the rod, so that sets can be blended.
 */
final class LoadSet {
  final RodMesh mesh;

  /** Dead force passing through the Gauss points toward the base [N], shape (count, 2, 3). */
  final double[] through;

  /** Dead force passing through the start of each element [N], shape (count, 3). */
  final double[] atStart;

  /** Dead force passing through the end of each element [N], shape (count, 3). */
  final double[] atEnd;

  /** Dead forces at nodes with the arm they act on. */
  final List<NodeLoad> armed = new ArrayList<>();

  /** Moments at nodes; the arm is not used. */
  final List<NodeLoad> moments = new ArrayList<>();

  final List<MeshLine> lines = new ArrayList<>();

  /**
   * A vector at a node.
   *
   * @param node the node
   * @param arm from the node to where it acts [m, node frame]
   * @param value force or moment [N or N m], shape (3)
   */
  record NodeLoad(int node, double[] arm, double[] value) {
    NodeLoad scaled(double factor) {
      return new NodeLoad(
          node, arm, new double[] {factor * value[0], factor * value[1], factor * value[2]});
    }
  }

  /**
   * Where a line ends.
   *
   * @param node the node it moves with; the clamp for a fixed point
   * @param arm from the node to the end in the node frame, or the fixed point [m]
   */
  record LineEnd(int node, double[] arm) {}

  /**
   * A line between two ends.
   *
   * @param a end on the rods
   * @param b other end
   * @param byLength whether its length is given, else its tension
   * @param value length [m] or tension [N]
   * @param compliance stretch per tension [m/N]
   */
  record MeshLine(LineEnd a, LineEnd b, boolean byLength, double value, double compliance) {
    MeshLine valued(double newValue) {
      return new MeshLine(a, b, byLength, newValue, compliance);
    }
  }

  private LoadSet(RodMesh mesh) {
    this.mesh = mesh;
    through = new double[6 * mesh.count];
    atStart = new double[3 * mesh.count];
    atEnd = new double[3 * mesh.count];
  }

  static LoadSet of(MeshBuilder.Layout layout, RodLoads loads) {
    LoadSet set = new LoadSet(layout.mesh());
    double[] atNode = new double[3 * set.mesh.count];
    for (RodLoads.DeadForce force : loads.forces()) {
      LineEnd end = end(layout, force.at());
      if (end.node() >= 0) {
        double[] value = array(force.force());
        add(atNode, 3 * end.node(), value, 1);
        if (Mat3.norm(end.arm()) > 0) {
          set.armed.add(new NodeLoad(end.node(), end.arm(), value));
        }
      }
    }
    for (RodLoads.DeadMoment moment : loads.moments()) {
      LineEnd end = end(layout, moment.at());
      if (end.node() >= 0) {
        set.moments.add(new NodeLoad(end.node(), end.arm(), array(moment.moment())));
      }
    }
    for (RodLine line : loads.lines()) {
      set.lines.add(line(layout, line));
    }
    set.pass(atNode, loads.weights());
    return set;
  }

  private void pass(double[] atNode, List<SpanWeight> weights) {
    for (int e = mesh.count - 1; e >= 0; e--) {
      double[] passing = Mat3.slice(atNode, 3 * e);
      System.arraycopy(passing, 0, atEnd, 3 * e, 3);
      double end = mesh.from[e] + mesh.h[e];
      for (int g = 0; g < 3; g++) {
        double s = mesh.from[e] + mesh.h[e] * (g == 0 ? RodMesh.GAUSS_1 : RodMesh.GAUSS_2);
        double[] out = passing.clone();
        for (SpanWeight weight : weights) {
          if (weight.span() == mesh.span[e]) {
            add(out, 0, array(weight.pull()), weight.between(g == 2 ? mesh.from[e] : s, end));
          }
        }
        System.arraycopy(out, 0, g == 2 ? atStart : through, g == 2 ? 3 * e : 6 * e + 3 * g, 3);
      }
      if (mesh.parent[e] >= 0) {
        add(atNode, 3 * mesh.parent[e], Mat3.slice(atStart, 3 * e), 1);
      }
    }
  }

  private static MeshLine line(MeshBuilder.Layout layout, RodLine line) {
    LineEnd a = end(layout, line.at());
    LineEnd b;
    if (line.other() instanceof RodLine.MovingEnd moving) {
      b = end(layout, moving.place());
    } else {
      RodLine.FixedEnd fixed = (RodLine.FixedEnd) line.other();
      b =
          new LineEnd(
              RodSpan.CLAMP,
              new double[] {fixed.point().x(), fixed.point().y(), fixed.point().z()});
    }
    if (line.hold() instanceof RodLine.Constant constant) {
      return new MeshLine(a, b, false, constant.tension(), 0);
    }
    RodLine.Length length = (RodLine.Length) line.hold();
    return new MeshLine(a, b, true, length.length(), length.compliance());
  }

  /** A place as node and arm; a place on the clamp becomes a fixed point. */
  private static LineEnd end(MeshBuilder.Layout layout, RodPlace place) {
    RodMesh mesh = layout.mesh();
    int node = layout.nodeAt(place.span(), place.s());
    double[] arm = array(place.arm());
    int span = place.span();
    double s = place.s();
    while (s == 0) {
      RodSpan rod = mesh.model.spans().get(span);
      Vector3 moved = rod.offset().plus(rod.turn().turn(new Vector3(arm[0], arm[1], arm[2])));
      arm = array(moved);
      span = rod.parent();
      s = span < 0 ? -1 : mesh.model.spans().get(span).length();
    }
    if (node < 0) {
      double[] fixed = mesh.base.clone();
      add(fixed, 0, Mat3.apply(mesh.baseFrame, 0, arm), 1);
      return new LineEnd(RodSpan.CLAMP, fixed);
    }
    return new LineEnd(node, arm);
  }

  /**
   * The set a fraction of the way from one to another that has the same lines in the same order.
   */
  static LoadSet blend(LoadSet from, LoadSet to, double part) {
    LoadSet out = new LoadSet(to.mesh);
    for (int i = 0; i < out.through.length; i++) {
      out.through[i] = (1 - part) * from.through[i] + part * to.through[i];
    }
    for (int i = 0; i < out.atStart.length; i++) {
      out.atStart[i] = (1 - part) * from.atStart[i] + part * to.atStart[i];
      out.atEnd[i] = (1 - part) * from.atEnd[i] + part * to.atEnd[i];
    }
    from.armed.forEach(load -> out.armed.add(load.scaled(1 - part)));
    to.armed.forEach(load -> out.armed.add(load.scaled(part)));
    from.moments.forEach(load -> out.moments.add(load.scaled(1 - part)));
    to.moments.forEach(load -> out.moments.add(load.scaled(part)));
    for (int i = 0; i < to.lines.size(); i++) {
      MeshLine line = to.lines.get(i);
      out.lines.add(line.valued((1 - part) * from.lines.get(i).value() + part * line.value()));
    }
    return out;
  }

  /** No dead loads; lines of the same ends, without tension or as long as they are at rest. */
  static LoadSet relaxed(LoadSet loads, RodState rest) {
    LoadSet out = new LoadSet(loads.mesh);
    for (MeshLine line : loads.lines) {
      out.lines.add(line.valued(line.byLength() ? LineForces.distance(rest, line) : 0));
    }
    return out;
  }

  /**
   * Whether the loads have a potential, so that stability can be read from it; moments have none.
   */
  boolean hasPotential() {
    return moments.stream().allMatch(moment -> Mat3.norm(moment.value()) == 0);
  }

  private static double[] array(Vector3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }

  private static void add(double[] to, int at, double[] value, double factor) {
    to[at] += factor * value[0];
    to[at + 1] += factor * value[1];
    to[at + 2] += factor * value[2];
  }
}
