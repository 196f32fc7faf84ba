// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.Arrays;

/**
 * The outline of a section, a disc less a hollow and a slot, for sums over the part of it beyond a
 * straight line, in closed form: circular segments, and for the slot a polygon cut by the line.
 * Such sums go without a jump as the line moves and turns.
 */
final class CutOutline {
  /** Sums: 1, p1, p2, p1 p1, p1 p2, p2 p2. */
  static final int SUMS = 6;

  /**
   * Pieces of an arc that bounds the slot. The corners lie a little outside, so that the area is
   * whole; second moments are met to the fourth power of the angle of a piece.
   */
  private static final int PIECES = 6;

  private final double radius;
  private final double hollow;

  /** Corners of the slot, in order against the clock; empty for none [m]. */
  private final double[] corner1;

  private final double[] corner2;

  CutOutline(SectionShape shape) {
    if (shape.dead().exists()) {
      throw new IllegalArgumentException("dead wood does not flow and needs fibres");
    }
    radius = shape.radius();
    hollow = shape.hollow();
    double[][] corners = shape.slot().exists() ? corners(shape) : new double[2][0];
    corner1 = corners[0];
    corner2 = corners[1];
  }

  private static double[][] corners(SectionShape shape) {
    SectionShape.Groove slot = shape.slot();
    double r = shape.radius();
    double half = Math.min(slot.width() / 2, r * (1 - 1e-9));
    double end = Math.asin(half / r);
    double piece = 2 * end / PIECES;
    double out = r * Math.sqrt(piece / Math.sin(piece));
    double[] up = new double[2 * (PIECES + 1)];
    double[] aside = new double[2 * (PIECES + 1)];
    for (int k = 0; k <= PIECES; k++) {
      double angle = -end + k * piece;
      aside[k] = -out * Math.sin(angle);
      up[k] = out * Math.cos(angle);
      // the way back along the floor starts where the rim ended
      int back = 2 * PIECES + 1 - k;
      aside[back] = aside[k];
      up[back] = Math.min(up[k], floor(shape, Math.min(r, Math.abs(aside[k]))));
    }
    double cos = Math.cos(slot.middle());
    double sin = Math.sin(slot.middle());
    double[][] corners = new double[2][up.length];
    for (int k = 0; k < up.length; k++) {
      // against the clock seen with axis 1 to the right and axis 2 up
      int from = up.length - 1 - k;
      corners[0][k] = up[from] * cos - aside[from] * sin;
      corners[1][k] = up[from] * sin + aside[from] * cos;
    }
    return corners;
  }

  /** Where the slot ends inward at a distance from its middle plane [m]. */
  private static double floor(SectionShape shape, double aside) {
    double top = Math.sqrt(Math.max(0, shape.radius() * shape.radius() - aside * aside));
    double hole = Math.sqrt(Math.max(0, shape.hollow() * shape.hollow() - aside * aside));
    return Math.max(shape.radius() - shape.slot().depth(), hole > 0 ? hole : -top);
  }

  /** Sums over all of the section, shape (6). */
  double[] whole() {
    double[] sums = new double[SUMS];
    beyond(1, 0, -2 * radius, sums);
    return sums;
  }

  /**
   * Sums over the part of the section farther along a direction than a distance.
   *
   * @param n1 direction of length one, along axis 1
   * @param n2 the same along axis 2
   * @param from the distance [m]
   * @param sums receives them, shape (6) [m2, m3, m3, m4, m4, m4]
   */
  void beyond(double n1, double n2, double from, double[] sums) {
    Arrays.fill(sums, 0);
    addSegment(n1, n2, from, sums);
    if (corner1.length > 0) {
      takePolygon(n1, n2, from, sums);
    }
  }

  private void addSegment(double n1, double n2, double from, double[] sums) {
    addDisc(radius, 1, from, n1, n2, sums);
    if (hollow > 0) {
      addDisc(hollow, -1, from, n1, n2, sums);
    }
  }

  /** Area and moments of a circular segment (Gere and Timoshenko, appendix D; from memory). */
  private static void addDisc(
      double r, double sign, double from, double n1, double n2, double[] sums) {
    double c = Math.max(-1, Math.min(1, from / r));
    if (c >= 1) {
      return;
    }
    double h = Math.acos(c);
    double s = Math.sqrt(1 - c * c);
    double square = sign * r * r;
    double first = 2 * square * r * s * s * s / 3;
    double along = square * r * r / 4 * (h - s * c * (1 - 2 * s * s));
    double across = square * r * r / 12 * (3 * h - s * c * (3 + 2 * s * s));
    sums[0] += square * (h - s * c);
    sums[1] += first * n1;
    sums[2] += first * n2;
    sums[3] += along * n1 * n1 + across * n2 * n2;
    sums[4] += (along - across) * n1 * n2;
    sums[5] += along * n2 * n2 + across * n1 * n1;
  }

  /** Walks round the polygon, along the line where it is beyond none of it. */
  private void takePolygon(double n1, double n2, double from, double[] sums) {
    int count = corner1.length;
    double x = corner1[count - 1];
    double y = corner2[count - 1];
    double over = n1 * x + n2 * y - from;
    double firstX = Double.NaN;
    double firstY = 0;
    double lastX = 0;
    double lastY = 0;
    for (int k = 0; k < count; k++) {
      double nextX = corner1[k];
      double nextY = corner2[k];
      double next = n1 * nextX + n2 * nextY - from;
      if (over > 0 || next > 0) {
        double in = over > 0 ? 0 : over / (over - next);
        double out = next > 0 ? 1 : over / (over - next);
        double ax = x + in * (nextX - x);
        double ay = y + in * (nextY - y);
        double bx = x + out * (nextX - x);
        double by = y + out * (nextY - y);
        if (Double.isNaN(firstX)) {
          firstX = ax;
          firstY = ay;
        } else {
          takeEdge(lastX, lastY, ax, ay, sums);
        }
        takeEdge(ax, ay, bx, by, sums);
        lastX = bx;
        lastY = by;
      }
      x = nextX;
      y = nextY;
      over = next;
    }
    if (!Double.isNaN(firstX)) {
      takeEdge(lastX, lastY, firstX, firstY, sums);
    }
  }

  /** What an edge adds to area and moments of its polygon (Green's theorem), taken away. */
  private static void takeEdge(double ax, double ay, double bx, double by, double[] sums) {
    double cross = ax * by - bx * ay;
    sums[0] -= cross / 2;
    sums[1] -= cross * (ax + bx) / 6;
    sums[2] -= cross * (ay + by) / 6;
    sums[3] -= cross * (ax * ax + ax * bx + bx * bx) / 12;
    sums[4] -= cross * (ax * (2 * ay + by) + bx * (2 * by + ay)) / 24;
    sums[5] -= cross * (ay * ay + ay * by + by * by) / 12;
  }
}
