// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Arrays;

/**
 * Where a straight line leaves the trunk: the cone that the calipers of a trunk segment give, and
 * beyond its ends a cylinder.
 */
final class Leaving {
  /** Stands for a line that ends inside. */
  static final double NEVER = Double.POSITIVE_INFINITY;

  /** Fractions nearer than this are one [1]; rounding. */
  private static final double SAME = 1e-12;

  private final Point3 foot;
  private final Vector3 axis;
  private final double length;
  private final double radius;
  private final double slope;

  Leaving(Frustum trunk) {
    foot = trunk.start();
    axis = trunk.direction().vector();
    length = trunk.length();
    radius = trunk.startRadius();
    slope = (trunk.endRadius() - trunk.startRadius()) / length;
  }

  /** The fraction of the way from one point to another at which the trunk is left [1]. */
  double fraction(Point3 from, Point3 to) {
    Vector3 start = from.minus(foot);
    Vector3 way = to.minus(from);
    double height = start.dot(axis);
    double rise = way.dot(axis);
    double[] breaks = {0, crossing(-height, rise), crossing(length - height, rise), 1};
    Arrays.sort(breaks);
    for (int n = 1; n < breaks.length; n++) {
      double lo = breaks[n - 1];
      double hi = breaks[n];
      if (hi - lo > SAME) {
        double middle = height + (lo + hi) / 2 * rise;
        boolean cone = middle > 0 && middle < length;
        double level = cone ? height : middle < 0 ? 0 : length;
        double[] gap = gap(start, way, radius + slope * level, cone ? slope * rise : 0);
        double at = first(gap, lo, hi);
        if (at != NEVER) {
          return at;
        }
      }
    }
    return NEVER;
  }

  private static double crossing(double by, double rise) {
    double at = rise == 0 ? 0 : by / rise;
    return Math.min(1, Math.max(0, at));
  }

  /**
   * Square of the distance from the axis less that of the radius, as c + b t + a t2; the radius
   * runs linearly.
   */
  private double[] gap(Vector3 start, Vector3 way, double startRadius, double widening) {
    Vector3 out = start.minus(axis.times(start.dot(axis)));
    Vector3 outward = way.minus(axis.times(way.dot(axis)));
    return new double[] {
      out.dot(out) - startRadius * startRadius,
      2 * (out.dot(outward) - startRadius * widening),
      outward.dot(outward) - widening * widening
    };
  }

  /** Where a gap is 0 or more for the first time between two fractions. */
  private static double first(double[] gap, double lo, double hi) {
    double a = gap[2];
    double b = gap[1];
    double c = gap[0];
    if (c + lo * (b + lo * a) >= 0) {
      return lo;
    }
    double root = b * b - 4 * a * c;
    if (root < 0) {
      return NEVER;
    }
    double q = -(b + Math.copySign(Math.sqrt(root), b)) / 2;
    double best = NEVER;
    for (double at : new double[] {q / a, c / q}) {
      if (at >= lo && at <= hi && at < best) {
        best = at;
      }
    }
    return best;
  }
}
