// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.List;

/**
 * The trunk line against its chord, from the base straight to the apex. Immutable.
 *
 * <p>The line departs from the chord by a vector that is zero at both ends: from the point of the
 * chord as far along it, by length, as the point of the line is along the line.
 */
final class TrunkFigures {
  /** A chord shorter than this part of the line says nothing: base and apex are one place. */
  private static final double NO_CHORD = 1e-6;

  private final List<Point3> points;
  private final List<Double> calipers;
  private final double length;
  final Vector3 chord;
  final boolean hasChord;

  /** Shape: one per point; departure from the chord [m]. */
  private final Vector3[] departure;

  /** Shape: one per piece; length [m]. */
  private final double[] lengths;

  private final Vector3[] axes;

  TrunkFigures(TrunkLine line) {
    points = line.points();
    calipers = line.calipers();
    length = line.length();
    chord = line.apex().minus(points.get(0));
    hasChord = chord.norm() > NO_CHORD * length;
    departure = new Vector3[points.size()];
    lengths = new double[points.size() - 1];
    axes = new Vector3[lengths.length];
    double along = 0;
    for (int k = 0; k < departure.length; k++) {
      if (k > 0) {
        Vector3 step = points.get(k).minus(points.get(k - 1));
        lengths[k - 1] = step.norm();
        axes[k - 1] = lengths[k - 1] > 0 ? step.times(1 / lengths[k - 1]) : Vector3.ZERO;
        along += lengths[k - 1];
      }
      departure[k] = points.get(k).minus(points.get(0).toward(line.apex(), along / length));
    }
  }

  int pieces() {
    return lengths.length;
  }

  /** How far along the chord a point is: 0 at the base, 1 at the apex, beyond both allowed [1]. */
  double height(Point3 point) {
    return hasChord ? point.minus(points.get(0)).dot(chord) / chord.dot(chord) : 0;
  }

  /** The middle of the line by length [m, tree frame]. */
  Point3 middle() {
    Vector3 sum = Vector3.ZERO;
    for (int k = 0; k < lengths.length; k++) {
      Point3 mid = points.get(k).toward(points.get(k + 1), 0.5);
      sum = sum.plus(mid.minus(points.get(0)).times(lengths[k] / length));
    }
    return points.get(0).plus(sum);
  }

  /** The point of the line nearest to a point [m, tree frame]. */
  Point3 nearest(Point3 point) {
    Point3 best = points.get(0);
    for (int k = 0; k < lengths.length; k++) {
      double foot = point.minus(points.get(k)).dot(axes[k]) / Math.max(lengths[k], 1e-300);
      Point3 there = points.get(k).toward(points.get(k + 1), Math.min(1, Math.max(0, foot)));
      best = there.distance(point) < best.distance(point) ? there : best;
    }
    return best;
  }

  /**
   * Root mean square of how far the line is seen beside its chord, over the length of the line [1].
   *
   * @param toward direction to the viewer
   * @param visible visible part of each piece [1]
   */
  double movement(Direction3 toward, double[] visible) {
    Vector3 side = toward.vector().cross(chord.times(1 / chord.norm()));
    double sum = 0;
    double before = 0;
    for (int k = 0; k < lengths.length; k++) {
      double after = departure[k + 1].dot(side);
      sum += visible[k] * lengths[k] * (before * before + before * after + after * after) / 3;
      before = after;
    }
    return Math.sqrt(sum / length) / length;
  }

  /** Mean of how much nearer to the viewer the line is than its chord, over its length [1]. */
  double bulge(Direction3 toward) {
    double sum = 0;
    for (int k = 0; k < lengths.length; k++) {
      sum += lengths[k] * departure[k].plus(departure[k + 1]).dot(toward.vector()) / 2;
    }
    return sum / (length * length);
  }

  /**
   * The part of the caliper at the base that is seen to go up to the apex; a trunk seen to thicken
   * counts against it [1].
   */
  double taper(Direction3 toward, double[] visible) {
    double sum = 0;
    for (int k = 0; k < lengths.length; k++) {
      double along = axes[k].dot(toward.vector());
      double seen = Math.sqrt(Math.max(0, 1 - along * along));
      sum += visible[k] * seen * (calipers.get(k) - calipers.get(k + 1));
    }
    return sum / calipers.get(0);
  }
}
