// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * Shapes as seen along one line of sight, turned anew by {@link #look}. Not for use by two threads
 * at once: it is the scratch one of them works with.
 *
 * <p>The picture's x runs to the right and level with the soil line as measured, its y square to
 * that and to the line of sight, depth toward the viewer [m]. Where a shape is nearest to the
 * viewer at a place of the picture is exact: the nearest of all its balls, in closed form.
 */
public final class Sight {
  static final double NOTHING = Double.NEGATIVE_INFINITY;

  /** Numbers of a shape seen, the same places for wood and pads. */
  static final int SEEN = 16;

  static final int X = 0;
  static final int Y = 1;

  /** Depth of the start of a piece, or of the middle of a pad. */
  static final int DEPTH = 2;

  static final int LEFT = 3;
  static final int RIGHT = 4;
  static final int LOW = 5;
  static final int HIGH = 6;

  /** No part of the shape is nearer to the viewer than this. */
  static final int NEAREST = 7;

  // Of a piece: axis in the picture and in depth, radius, its growth, length squared seen less
  // growth squared, and the same with depth.
  static final int AXIS_X = 8;
  static final int AXIS_Y = 9;
  static final int AXIS_DEPTH = 10;
  static final int RADIUS = 11;
  static final int GROWTH = 12;
  static final int SPREAD = 13;
  static final int STEEP = 14;

  // Of a pad: inverse of its outline, slope of the middle of its chords, half its longest chord.
  static final int INVERSE_XX = 8;
  static final int INVERSE_XY = 9;
  static final int INVERSE_YY = 10;
  static final int SLOPE_X = 11;
  static final int SLOPE_Y = 12;
  static final int HALF_SQUARED = 13;
  static final int OUTLINE_XX = 14;
  static final int OUTLINE_YY = 15;

  /** Keeps divisions by the length seen sound where the axis points at the viewer. */
  private static final double LEAST_SPREAD = 1e-9;

  /** A line of sight this near to straight up or down has no level right side of its own. */
  private static final double PLUMB = 1e-9;

  final Shapes shapes;

  /** Shape: {@link #SEEN} per shape. */
  final double[] seen;

  private final double[] right = new double[3];
  private final double[] up = new double[3];
  private final double[] toward = new double[3];

  /** Makes room to look at shapes. */
  public Sight(Shapes shapes) {
    this.shapes = shapes;
    seen = new double[SEEN * shapes.count];
  }

  /** Looks at the shapes from the side a direction points to. */
  public void look(Direction3 towardViewer) {
    toward[0] = towardViewer.x();
    toward[1] = towardViewer.y();
    toward[2] = towardViewer.z();
    double level = Math.hypot(toward[0], toward[1]);
    right[0] = level > PLUMB ? -toward[1] / level : 1;
    right[1] = level > PLUMB ? toward[0] / level : 0;
    right[2] = 0;
    up[0] = toward[1] * right[2] - toward[2] * right[1];
    up[1] = toward[2] * right[0] - toward[0] * right[2];
    up[2] = toward[0] * right[1] - toward[1] * right[0];
    for (int i = 0; i < shapes.pieces; i++) {
      piece(i);
    }
    for (int i = shapes.pieces; i < shapes.count; i++) {
      pad(i);
    }
  }

  private static double dot(double[] of, int at, double[] axis) {
    return of[at] * axis[0] + of[at + 1] * axis[1] + of[at + 2] * axis[2];
  }

  private void piece(int i) {
    double[] wood = shapes.wood;
    int from = Shapes.PIECE * i;
    int at = SEEN * i;
    double x = dot(wood, from, right);
    double y = dot(wood, from, up);
    double depth = dot(wood, from, toward);
    double axisX = dot(wood, from + 3, right);
    double axisY = dot(wood, from + 3, up);
    double axisDepth = dot(wood, from + 3, toward);
    double radius = wood[from + 6];
    double growth = wood[from + 7];
    double end = radius + growth;
    seen[at + X] = x;
    seen[at + Y] = y;
    seen[at + DEPTH] = depth;
    seen[at + LEFT] = Math.min(x - radius, x + axisX - end);
    seen[at + RIGHT] = Math.max(x + radius, x + axisX + end);
    seen[at + LOW] = Math.min(y - radius, y + axisY - end);
    seen[at + HIGH] = Math.max(y + radius, y + axisY + end);
    seen[at + NEAREST] = Math.max(depth + radius, depth + axisDepth + end);
    seen[at + AXIS_X] = axisX;
    seen[at + AXIS_Y] = axisY;
    seen[at + AXIS_DEPTH] = axisDepth;
    seen[at + RADIUS] = radius;
    seen[at + GROWTH] = growth;
    double spread = axisX * axisX + axisY * axisY - growth * growth;
    double least = LEAST_SPREAD * (axisX * axisX + axisY * axisY + axisDepth * axisDepth);
    spread = Math.abs(spread) < least ? least : spread;
    seen[at + SPREAD] = spread;
    seen[at + STEEP] = spread + axisDepth * axisDepth;
  }

  private void pad(int i) {
    double[] pads = shapes.pads;
    int from = Shapes.PAD * (i - shapes.pieces);
    int at = SEEN * i;
    double xx = form(from, right, right);
    double xy = form(from, right, up);
    double yy = form(from, up, up);
    double xd = form(from, right, toward);
    double yd = form(from, up, toward);
    double dd = form(from, toward, toward);
    double x = dot(pads, from, right);
    double y = dot(pads, from, up);
    double determinant = xx * yy - xy * xy;
    double slopeX = (yy * xd - xy * yd) / determinant;
    double slopeY = (xx * yd - xy * xd) / determinant;
    seen[at + X] = x;
    seen[at + Y] = y;
    seen[at + DEPTH] = dot(pads, from, toward);
    seen[at + LEFT] = x - Math.sqrt(xx);
    seen[at + RIGHT] = x + Math.sqrt(xx);
    seen[at + LOW] = y - Math.sqrt(yy);
    seen[at + HIGH] = y + Math.sqrt(yy);
    seen[at + NEAREST] = seen[at + DEPTH] + Math.sqrt(dd);
    seen[at + INVERSE_XX] = yy / determinant;
    seen[at + INVERSE_XY] = -xy / determinant;
    seen[at + INVERSE_YY] = xx / determinant;
    seen[at + SLOPE_X] = slopeX;
    seen[at + SLOPE_Y] = slopeY;
    seen[at + HALF_SQUARED] = Math.max(0, dd - slopeX * xd - slopeY * yd);
    seen[at + OUTLINE_XX] = xx;
    seen[at + OUTLINE_YY] = yy;
  }

  /** The squared half sizes of a pad between two directions. */
  private double form(int from, double[] a, double[] b) {
    double[] m = shapes.pads;
    return a[0] * (m[from + 3] * b[0] + m[from + 4] * b[1] + m[from + 5] * b[2])
        + a[1] * (m[from + 4] * b[0] + m[from + 6] * b[1] + m[from + 7] * b[2])
        + a[2] * (m[from + 5] * b[0] + m[from + 7] * b[1] + m[from + 8] * b[2]);
  }

  /**
   * How near to the viewer a shape comes at a place of the picture [m], or {@link #NOTHING}; as if
   * there were no soil.
   *
   * @param i the shape
   */
  double front(int i, double x, double y) {
    return i < shapes.pieces ? side(i, x, y, 1) : padFront(i, x, y);
  }

  /** The highest place above the soil line that a ray passes inside a piece it meets [m]. */
  double top(int i, double x, double y, double front) {
    return height(x, y, toward[2] >= 0 ? front : side(i, x, y, -1));
  }

  /**
   * Where a ray meets what soil leaves of a piece: seen from below, it is cut off level.
   *
   * @param low how far below the soil line it is cut off [m]
   */
  double aboveSoil(double x, double y, double front, double low) {
    boolean cut = toward[2] < 0 && height(x, y, front) < -low;
    return cut ? -(low + height(x, y, 0)) / toward[2] : front;
  }

  /** Height above the soil line as measured of a point of the picture [m]. */
  double height(double x, double y, double depth) {
    return y * up[2] + depth * toward[2];
  }

  /** The side of a piece toward the viewer (sign 1) or away (-1). */
  private double side(int i, double x, double y, double sign) {
    int at = SEEN * i;
    double axisDepth = sign * seen[at + AXIS_DEPTH];
    double dx = x - seen[at + X];
    double dy = y - seen[at + Y];
    double radius = seen[at + RADIUS];
    double growth = seen[at + GROWTH];
    // A ball a part t along the axis reaches t * axisDepth + sqrt(c + 2 d t - spread t t).
    double c = radius * radius - dx * dx - dy * dy;
    double d = radius * growth + dx * seen[at + AXIS_X] + dy * seen[at + AXIS_Y];
    double spread = seen[at + SPREAD];
    double best = NOTHING;
    if (spread > 0) {
      double discriminant = c * spread + d * d;
      if (discriminant < 0) {
        return NOTHING;
      }
      double root = Math.sqrt(discriminant / seen[at + STEEP]);
      double t = (d + axisDepth * root) / spread;
      if (t >= 0 && t <= 1) {
        best = t * axisDepth + root;
      } else {
        best = ball(t < 0 ? 0 : 1, axisDepth, c, d, spread);
      }
    } else {
      best = nearlyAlong(axisDepth, c, d, at);
    }
    return best == NOTHING ? NOTHING : sign * (sign * seen[at + DEPTH] + best);
  }

  private static double ball(double t, double axisDepth, double c, double d, double spread) {
    double squared = c + t * (2 * d - spread * t);
    return squared >= 0 ? t * axisDepth + Math.sqrt(squared) : NOTHING;
  }

  /** Where one end's ball hides the other's outline. */
  private double nearlyAlong(double axisDepth, double c, double d, int at) {
    double spread = seen[at + SPREAD];
    double best = Math.max(ball(0, axisDepth, c, d, spread), ball(1, axisDepth, c, d, spread));
    double discriminant = c * spread + d * d;
    if (spread < 0 && discriminant >= 0) {
      double t = (d + axisDepth * Math.sqrt(discriminant / seen[at + STEEP])) / spread;
      if (t > 0 && t < 1) {
        best = Math.max(best, ball(t, axisDepth, c, d, spread));
      }
    }
    return best;
  }

  private double padFront(int i, double x, double y) {
    int at = SEEN * i;
    double dx = x - seen[at + X];
    double dy = y - seen[at + Y];
    double inside =
        1
            - seen[at + INVERSE_XX] * dx * dx
            - 2 * seen[at + INVERSE_XY] * dx * dy
            - seen[at + INVERSE_YY] * dy * dy;
    if (inside < 0) {
      return NOTHING;
    }
    return seen[at + DEPTH]
        + seen[at + SLOPE_X] * dx
        + seen[at + SLOPE_Y] * dy
        + Math.sqrt(seen[at + HALF_SQUARED] * inside);
  }

  /** How long the axis of a piece is in the picture [m]. */
  double length(int i) {
    double x = seen[SEEN * i + AXIS_X];
    double y = seen[SEEN * i + AXIS_Y];
    return Math.sqrt(x * x + y * y);
  }

  /** Area a shape covers of the picture, whether hidden or not, soil left out of account [m2]. */
  public double area(int i) {
    int at = SEEN * i;
    if (i >= shapes.pieces) {
      double squared =
          seen[at + INVERSE_XX] * seen[at + INVERSE_YY]
              - seen[at + INVERSE_XY] * seen[at + INVERSE_XY];
      return Math.PI / Math.sqrt(squared);
    }
    double radius = seen[at + RADIUS];
    double end = radius + seen[at + GROWTH];
    double length = length(i);
    if (length <= Math.abs(seen[at + GROWTH])) {
      double more = Math.max(radius, end);
      return Math.PI * more * more;
    }
    double slant = Math.asin(-seen[at + GROWTH] / length);
    return length * Math.cos(slant) * (radius + end)
        + radius * radius * (Math.PI / 2 + slant)
        + end * end * (Math.PI / 2 - slant);
  }

  /** Where a point is in the picture, to the right [m]. */
  public double x(Vector3 point) {
    return point.x() * right[0] + point.y() * right[1] + point.z() * right[2];
  }

  /** Where a point is in the picture, upward [m]. */
  public double y(Vector3 point) {
    return point.x() * up[0] + point.y() * up[1] + point.z() * up[2];
  }

  /** How near to the viewer a point is [m]. */
  public double depth(Vector3 point) {
    return point.x() * toward[0] + point.y() * toward[1] + point.z() * toward[2];
  }
}
