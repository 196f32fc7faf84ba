// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;

/**
 * The pose of a tree of rods under load: sections anywhere along any span. Parts beyond the last
 * load are carried along at rest. Not changed once made.
 */
public final class RodPose {
  private final MeshBuilder.Layout layout;
  private final RodMesh mesh;
  private final RodState state;
  private final SectionPath path;
  private final int[] firstElement;
  private final int[] endElement;

  /** Where each span stops carrying load: frame and position, shape (spans)(9) and (spans)(3). */
  private final double[][] restFrame;

  private final double[][] restFrom;

  RodPose(MeshSolver solver, RodState state, LineForces lines, LoadSet loads) {
    layout = solver.layout;
    mesh = solver.mesh;
    this.state = new RodState(mesh);
    this.state.copyFrom(state);
    ForceSweep forces = new ForceSweep(mesh);
    forces.run(loads, lines);
    NodeTerms nodes = new NodeTerms(mesh);
    nodes.gather(state, loads, lines, forces);
    double[] atEnd = new double[3 * mesh.count];
    double[] atStart = new double[3 * mesh.count];
    Statics.run(state, forces, nodes, atEnd, atStart);
    path = new SectionPath(this.state, forces, atEnd);
    int spans = mesh.model.spans().size();
    firstElement = new int[spans];
    endElement = new int[spans];
    for (int e = mesh.count - 1; e >= 0; e--) {
      firstElement[mesh.span[e]] = e;
      endElement[mesh.span[e]] = Math.max(endElement[mesh.span[e]], e + 1);
    }
    restFrame = new double[spans][9];
    restFrom = new double[spans][];
    for (int span = 0; span < spans; span++) {
      findRest(span);
    }
  }

  private void findRest(int span) {
    double[] frame = restFrame[span];
    if (endElement[span] > firstElement[span]) {
      int last = endElement[span] - 1;
      System.arraycopy(state.nodeFrame, 9 * last, frame, 0, 9);
      restFrom[span] = Mat3.slice(state.node, 3 * last);
      return;
    }
    RodSpan rod = mesh.model.spans().get(span);
    double[] parentFrame = mesh.baseFrame.clone();
    double[] at = mesh.base.clone();
    if (rod.parent() >= 0) {
      System.arraycopy(restFrame[rod.parent()], 0, parentFrame, 0, 9);
      RodSpan parent = mesh.model.spans().get(rod.parent());
      double free = parent.length() - loadedTo(rod.parent());
      double[] arc = RestArc.end(parentFrame, array(parent.restCurvature()), free);
      for (int k = 0; k < 3; k++) {
        at[k] = restFrom[rod.parent()][k] + arc[k];
      }
    }
    double[] link = Mat3.apply(parentFrame, 0, array(rod.offset()));
    Mat3.multiply(parentFrame, 0, Mat3.of(rod.turn()), 0, frame, 0);
    restFrom[span] = new double[] {at[0] + link[0], at[1] + link[1], at[2] + link[2]};
  }

  public RodModel model() {
    return mesh.model;
  }

  /** How far from its start a span carries load; 0 for a span that does not [m]. */
  public double loadedTo(int span) {
    return Math.max(0, layout.loadedTo()[span]);
  }

  /** Ends of the elements along the loaded part of a span, the start first [m]. */
  public List<Double> stations(int span) {
    List<Double> stations = new ArrayList<>(List.of(0.0));
    for (int e = firstElement[span]; e < endElement[span]; e++) {
      stations.add(mesh.from[e] + mesh.h[e]);
    }
    return stations;
  }

  /**
   * The section at a place.
   *
   * @param span index of the span
   * @param s distance from its start [m]
   */
  public RodSection section(int span, double s) {
    double length = mesh.model.spans().get(span).length();
    if (!(s >= 0 && s <= length * (1 + 1e-12))) {
      throw new IllegalArgumentException("no place at " + s + " m on a span of " + length + " m");
    }
    if (s > loadedTo(span) || endElement[span] == firstElement[span]) {
      return unloaded(span, s);
    }
    int e = elementAt(span, s);
    double x = Math.min(1, (s - mesh.from[e]) / mesh.h[e]);
    double[] frame = path.frame(e, x);
    double[] force = Mat3.applyTransposed(frame, 0, path.force(e, x));
    double[] moment = Mat3.applyTransposed(frame, 0, path.moment(e, x));
    double[] strain = lawAt(span, s).strainUnder(moment[0], moment[1], moment[2]);
    return new RodSection(
        point(path.position(e, x)), rotation(frame), vector(force), vector(moment), vector(strain));
  }

  /**
   * The added curvature of bending at a place, as {@link RodSection#addedCurvature} but for less
   * work [1/m].
   *
   * @param span index of the span
   * @param s distance from its start, within its loaded part [m]
   */
  public double addedCurvature(int span, double s) {
    int e = elementAt(span, s);
    double x = Math.min(1, (s - mesh.from[e]) / mesh.h[e]);
    double[] moment = Mat3.applyTransposed(path.frame(e, x), 0, path.moment(e, x));
    double[] strain = lawAt(span, s).strainUnder(moment[0], moment[1], moment[2]);
    return Math.hypot(strain[0], strain[1]);
  }

  /**
   * The moment through the section at a place, without its strain being asked for [N m, section
   * frame].
   *
   * @param span index of the span
   * @param s distance from its start [m]
   */
  public Vector3 moment(int span, double s) {
    if (s > loadedTo(span) || endElement[span] == firstElement[span]) {
      return Vector3.ZERO;
    }
    int e = elementAt(span, s);
    double x = Math.min(1, (s - mesh.from[e]) / mesh.h[e]);
    return vector(Mat3.applyTransposed(path.frame(e, x), 0, path.moment(e, x)));
  }

  /**
   * The first element whose moment, in its middle or at one of its ends, its section cannot carry;
   * else -1.
   */
  int overloaded() {
    for (int e = 0; e < mesh.count; e++) {
      for (int half = 0; half <= 2; half++) {
        double x = half / 2.0;
        double[] moment = Mat3.applyTransposed(path.frame(e, x), 0, path.moment(e, x));
        SectionLaw law = lawAt(mesh.span[e], mesh.from[e] + x * mesh.h[e]);
        if (!law.canCarry(moment[0], moment[1])) {
          return e;
        }
      }
    }
    return -1;
  }

  private SectionLaw lawAt(int span, double s) {
    return mesh.model.spans().get(span).section().at(s);
  }

  private int elementAt(int span, double s) {
    int low = firstElement[span];
    int high = endElement[span] - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (mesh.from[middle] <= s) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  private RodSection unloaded(int span, double s) {
    double[] frame = restFrame[span].clone();
    double[] from = restFrom[span];
    Vector3 u = mesh.model.spans().get(span).restCurvature();
    double[] moved = RestArc.end(frame, array(u), s - loadedTo(span));
    Point3 end = new Point3(from[0] + moved[0], from[1] + moved[1], from[2] + moved[2]);
    return new RodSection(end, rotation(frame), Vector3.ZERO, Vector3.ZERO, Vector3.ZERO);
  }

  private static double[] array(Vector3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }

  private static Point3 point(double[] p) {
    return new Point3(p[0], p[1], p[2]);
  }

  private static Vector3 vector(double[] v) {
    return new Vector3(v[0], v[1], v[2]);
  }

  private static Rotation rotation(double[] f) {
    return Rotation.toAxes(
        Direction3.of(f[0], f[3], f[6]),
        Direction3.of(f[1], f[4], f[7]),
        Direction3.of(f[2], f[5], f[8]));
  }
}
