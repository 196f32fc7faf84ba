// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The pull that a place would need, whatever there is to tie to, and how things change about it.
 *
 * @param place the place
 * @param force the pull that brings the target nearest [N]
 * @param at where the place is then [m, tree frame]
 * @param miss how far the target is then [m]
 * @param missing what is missing then [m]
 * @param slope change of what is missing with the force [m/N], shape (missing)(3)
 * @param move change of the place with the force [m/N], shape (3)(3)
 */
record Wish(
    TiePlace place,
    Vector3 force,
    Point3 at,
    double miss,
    RealVector missing,
    RealMatrix slope,
    RealMatrix move) {

  /**
   * What a line to an anchor is expected to do, to first order.
   *
   * @param miss how far it leaves the target [m]
   * @param pull its pull [N]
   * @param at where it brings its place [m, tree frame]
   */
  record Guess(double miss, double pull, Point3 at) {}

  /** The best pull toward an anchor; empty where any pull leads away from the target. */
  Optional<Guess> toward(Point3 anchor) {
    Direction3 way = anchor.minus(at).direction();
    RealVector wished = vector(force);
    RealVector from = missing.subtract(slope.operate(wished));
    RealVector along = slope.operate(vector(way.vector()));
    double square = along.dotProduct(along);
    double pull = square > 0 ? -along.dotProduct(from) / square : 0;
    if (!(pull > 0)) {
      return Optional.empty();
    }
    RealVector change = vector(way.times(pull).minus(force));
    RealVector moved = move.operate(change);
    return Optional.of(
        new Guess(
            from.add(along.mapMultiply(pull)).getNorm(),
            pull,
            at.plus(new Vector3(moved.getEntry(0), moved.getEntry(1), moved.getEntry(2)))));
  }

  static RealVector vector(Vector3 v) {
    return new ArrayRealVector(new double[] {v.x(), v.y(), v.z()}, false);
  }

  static RealMatrix matrix(double[][] rows) {
    return new Array2DRowRealMatrix(rows, false);
  }
}
