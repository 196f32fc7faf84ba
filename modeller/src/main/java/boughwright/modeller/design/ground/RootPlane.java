// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Planting;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * The plane that best fits the middles of the roots where they leave the trunk: the sum of the
 * squares of their distances from it, each times the caliper of its root, is least. A thick root
 * counts for more since more of it is seen, and it yields least.
 *
 * @param middle the place of the starts on average, each counted by its caliper [m, tree frame]
 * @param normal direction square to the plane, upward [tree frame]
 * @param offsets how far each start lies above the plane, in the order asked; below it less than 0
 *     [m]
 */
public record RootPlane(Point3 middle, Direction3 normal, List<Double> offsets) {
  /**
   * Starts whose spread one way is less than this part of their spread the other way lie on a line:
   * what tilts across it cannot be told from how roots vary [1]. Our choice.
   */
  static final double LINE = 0.1;

  /** Fewer points have no plane. */
  static final int FEWEST = 3;

  public RootPlane {
    Objects.requireNonNull(middle, "middle");
    Objects.requireNonNull(normal, "normal");
    offsets = List.copyOf(offsets);
  }

  /** The plane of roots that are seen; empty for fewer than three, or where all lie on a line. */
  public static Optional<RootPlane> of(List<Root> roots) {
    return of(roots.stream().map(Root::start).toList(), roots.stream().map(Root::caliper).toList());
  }

  /** The plane of points that count by weights, which are more than 0. */
  static Optional<RootPlane> of(List<Point3> points, List<Double> weights) {
    if (points.size() < FEWEST) {
      return Optional.empty();
    }
    Point3 middle = middle(points, weights);
    RealMatrix rows = MatrixUtils.createRealMatrix(points.size(), 3);
    for (int n = 0; n < points.size(); n++) {
      Vector3 row = points.get(n).minus(middle).times(Math.sqrt(weights.get(n)));
      rows.setRow(n, new double[] {row.x(), row.y(), row.z()});
    }
    SingularValueDecomposition parts = new SingularValueDecomposition(rows);
    double[] spread = parts.getSingularValues();
    if (!(spread[1] > LINE * spread[0])) {
      return Optional.empty();
    }
    double[] square = parts.getV().getColumn(2);
    double up = square[2] < 0 ? -1 : 1;
    Direction3 normal = Direction3.of(up * square[0], up * square[1], up * square[2]);
    List<Double> offsets = new ArrayList<>();
    for (Point3 point : points) {
      offsets.add(point.minus(middle).dot(normal.vector()));
    }
    return Optional.of(new RootPlane(middle, normal, offsets));
  }

  /** The place of points on average, each by its weight. */
  static Point3 middle(List<Point3> points, List<Double> weights) {
    Vector3 sum = Vector3.ZERO;
    double all = 0;
    for (int n = 0; n < points.size(); n++) {
      sum = sum.plus(points.get(n).minus(Point3.ORIGIN).times(weights.get(n)));
      all += weights.get(n);
    }
    return Point3.ORIGIN.plus(sum.times(1 / all));
  }

  /** How steep the plane is on the tree as measured [rad]. */
  public double tilt() {
    return Direction3.UP.angleTo(normal);
  }

  /** The azimuth toward which the plane falls on the tree as measured [rad]. */
  public double fallsToward() {
    return Math.atan2(-normal.x(), -normal.y());
  }

  /**
   * The planting angle that levels the roots best: the tree's top goes away from where they fall.
   */
  public Planting levelling() {
    return new Planting(tilt(), fallsToward() + Math.PI);
  }

  /** Distance of the starts from the plane: the root of the mean square [m]. */
  public double unevenness() {
    return Math.sqrt(offsets.stream().mapToDouble(o -> o * o).average().orElseThrow());
  }
}
