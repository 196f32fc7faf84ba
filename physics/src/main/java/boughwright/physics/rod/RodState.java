// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * A configuration of a mesh: frames and curvatures at the Gauss points, frames and positions at the
 * nodes. A workspace: {@link #move} and {@link #copyFrom} write over it.
 *
 * <p>Frames and curvatures are moved by the same piecewise quadratic field of turns, exactly, so
 * they stay those of one continuous rod whatever the size of the moves. Turns are composed by the
 * Cayley map, which agrees with the exponential to second order, so tangents are exact, and needs
 * no trigonometry.
 */
final class RodState {
  final RodMesh mesh;

  /** Frames at the Gauss points [section to space], shape (count, 2, 9). */
  final double[] frame;

  /** Curvatures at the Gauss points [rad/m, section frame], shape (count, 2, 3). */
  final double[] curvature;

  /** Frames at the nodes [section to space], shape (count, 9). */
  final double[] nodeFrame;

  /** Positions of the nodes [m], shape (count, 3). */
  final double[] node;

  /** Turns summed over all moves, for the work of moments [rad], shape (count, 3). */
  final double[] turned;

  RodState(RodMesh mesh) {
    this.mesh = mesh;
    frame = new double[18 * mesh.count];
    curvature = new double[6 * mesh.count];
    nodeFrame = new double[9 * mesh.count];
    node = new double[3 * mesh.count];
    turned = new double[3 * mesh.count];
  }

  void copyFrom(RodState other) {
    System.arraycopy(other.frame, 0, frame, 0, frame.length);
    System.arraycopy(other.curvature, 0, curvature, 0, curvature.length);
    System.arraycopy(other.nodeFrame, 0, nodeFrame, 0, nodeFrame.length);
    System.arraycopy(other.node, 0, node, 0, node.length);
    System.arraycopy(other.turned, 0, turned, 0, turned.length);
  }

  /** The frame at the start of an element, written to out. */
  void startFrame(int e, double[] out) {
    int p = mesh.parent[e];
    double[] frames = p < 0 ? mesh.baseFrame : nodeFrame;
    int at = p < 0 ? 0 : 9 * p;
    if (mesh.turn[e] == null) {
      System.arraycopy(frames, at, out, 0, 9);
    } else {
      Mat3.multiply(frames, at, mesh.turn[e], 0, out, 0);
    }
  }

  /** The rigid link at the start of an element in space [m]; zero where there is none. */
  double[] link(int e) {
    if (mesh.offset[e] == null) {
      return new double[3];
    }
    int p = mesh.parent[e];
    return p < 0
        ? Mat3.apply(mesh.baseFrame, 0, mesh.offset[e])
        : Mat3.apply(nodeFrame, 9 * p, mesh.offset[e]);
  }

  /** The position of the start of an element [m]. */
  double[] start(int e) {
    int p = mesh.parent[e];
    double[] at = p < 0 ? mesh.base.clone() : Mat3.slice(node, 3 * p);
    double[] link = link(e);
    return new double[] {at[0] + link[0], at[1] + link[1], at[2] + link[2]};
  }

  /** Works out the node positions from the frames at the Gauss points. */
  void placeNodes() {
    for (int e = 0; e < mesh.count; e++) {
      int p = mesh.parent[e];
      double x = p < 0 ? mesh.base[0] : node[3 * p];
      double y = p < 0 ? mesh.base[1] : node[3 * p + 1];
      double z = p < 0 ? mesh.base[2] : node[3 * p + 2];
      if (mesh.offset[e] != null) {
        double[] link = link(e);
        x += link[0];
        y += link[1];
        z += link[2];
      }
      double half = mesh.h[e] / 2;
      int f = 18 * e;
      node[3 * e] = x + half * (frame[f + 2] + frame[f + 11]);
      node[3 * e + 1] = y + half * (frame[f + 5] + frame[f + 14]);
      node[3 * e + 2] = z + half * (frame[f + 8] + frame[f + 17]);
    }
  }

  /**
   * Becomes the state reached from another by turning every section.
   *
   * @param before the state to start from
   * @param atNode turns at the nodes [rad, space], shape (count, 3)
   * @param atMiddle turns at the element middles [rad, space], shape (count, 3)
   * @param part factor on both
   */
  void move(RodState before, double[] atNode, double[] atMiddle, double part) {
    for (int e = 0; e < mesh.count; e++) {
      int p = 3 * mesh.parent[e];
      double px = p < 0 ? 0 : part * atNode[p];
      double py = p < 0 ? 0 : part * atNode[p + 1];
      double pz = p < 0 ? 0 : part * atNode[p + 2];
      double mx = part * atMiddle[3 * e];
      double my = part * atMiddle[3 * e + 1];
      double mz = part * atMiddle[3 * e + 2];
      double ex = part * atNode[3 * e];
      double ey = part * atNode[3 * e + 1];
      double ez = part * atNode[3 * e + 2];
      double perLength = 1 / mesh.h[e];
      for (int g = 0; g < 2; g++) {
        double[] n = Shape.N[g];
        double[] d = Shape.D[g];
        double x = n[0] * px + n[1] * mx + n[2] * ex;
        double y = n[0] * py + n[1] * my + n[2] * ey;
        double z = n[0] * pz + n[1] * mz + n[2] * ez;
        double dx = (d[0] * px + d[1] * mx + d[2] * ex) * perLength;
        double dy = (d[0] * py + d[1] * my + d[2] * ey) * perLength;
        double dz = (d[0] * pz + d[1] * mz + d[2] * ez) * perLength;
        double c = 1 / (1 + 0.25 * (x * x + y * y + z * z));
        double sx = c * (dx - 0.5 * (y * dz - z * dy));
        double sy = c * (dy - 0.5 * (z * dx - x * dz));
        double sz = c * (dz - 0.5 * (x * dy - y * dx));
        double[] r = before.frame;
        int f = 18 * e + 9 * g;
        int k = 6 * e + 3 * g;
        curvature[k] = before.curvature[k] + r[f] * sx + r[f + 3] * sy + r[f + 6] * sz;
        curvature[k + 1] = before.curvature[k + 1] + r[f + 1] * sx + r[f + 4] * sy + r[f + 7] * sz;
        curvature[k + 2] = before.curvature[k + 2] + r[f + 2] * sx + r[f + 5] * sy + r[f + 8] * sz;
        turn(r, frame, f, x, y, z, c);
      }
      double c = 1 / (1 + 0.25 * (ex * ex + ey * ey + ez * ez));
      turn(before.nodeFrame, nodeFrame, 9 * e, ex, ey, ez, c);
      turned[3 * e] = before.turned[3 * e] + ex;
      turned[3 * e + 1] = before.turned[3 * e + 1] + ey;
      turned[3 * e + 2] = before.turned[3 * e + 2] + ez;
    }
    placeNodes();
  }

  /** Cayley turn: C v = v + c (w x v + w x (w x v) / 2), c = 1 / (1 + w.w / 4). */
  private static void turn(
      double[] from, double[] to, int f, double x, double y, double z, double c) {
    double half = 0.5 * c;
    double xx = half * x * x;
    double yy = half * y * y;
    double zz = half * z * z;
    double xy = half * x * y;
    double xz = half * x * z;
    double yz = half * y * z;
    double cx = c * x;
    double cy = c * y;
    double cz = c * z;
    double m0 = 1 - (yy + zz);
    double m1 = xy - cz;
    double m2 = xz + cy;
    double m3 = xy + cz;
    double m4 = 1 - (xx + zz);
    double m5 = yz - cx;
    double m6 = xz - cy;
    double m7 = yz + cx;
    double m8 = 1 - (xx + yy);
    for (int j = f; j < f + 3; j++) {
      double a = from[j];
      double b = from[j + 3];
      double d = from[j + 6];
      to[j] = m0 * a + m1 * b + m2 * d;
      to[j + 3] = m3 * a + m4 * b + m5 * d;
      to[j + 6] = m6 * a + m7 * b + m8 * d;
    }
  }
}
