// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Vector3;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * How what is missing once a bend is let go changes with the bend: at first as with the bare limb
 * while it is held, corrected by each trial (C. G. Broyden, Mathematics of Computation 19, 1965).
 * Ways in which the limb hardly gives are left alone.
 */
final class BendSlopes {
  /** Singular values below this part of the largest count as none [1]. */
  private static final double RANK = 0.1;

  private RealMatrix now;
  private RealVector from = Wish.vector(Vector3.ZERO);
  private RealVector missing;

  /**
   * Slopes for one place.
   *
   * @param wish the pull it would need on the bare limb
   * @param atRest what is missing before anything is bent [m]
   */
  BendSlopes(Wish wish, RealVector atRest) {
    now = wish.slope().multiply(inverse(wish.move()));
    missing = atRest;
  }

  /** A bend was let go: what was missing then [m]. */
  void learn(Vector3 by, RealVector found) {
    RealVector dx = Wish.vector(by).subtract(from);
    double square = dx.dotProduct(dx);
    if (square > 0) {
      RealVector wrong = found.subtract(missing).subtract(now.operate(dx));
      now = now.add(wrong.outerProduct(dx).scalarMultiply(1 / square));
    }
    from = Wish.vector(by);
    missing = found;
  }

  /** The change of a bend that would take away what it leaves missing [m]. */
  Vector3 step(RealVector left) {
    RealVector step = inverse(now).operate(left).mapMultiply(-1);
    return new Vector3(step.getEntry(0), step.getEntry(1), step.getEntry(2));
  }

  private static RealMatrix inverse(RealMatrix matrix) {
    SingularValueDecomposition parts = new SingularValueDecomposition(matrix);
    double[] values = parts.getSingularValues();
    double[] inverse = new double[values.length];
    for (int k = 0; k < values.length; k++) {
      inverse[k] = values[k] > RANK * values[0] ? 1 / values[k] : 0;
    }
    return parts.getV().multiply(new DiagonalMatrix(inverse)).multiply(parts.getUT());
  }
}
