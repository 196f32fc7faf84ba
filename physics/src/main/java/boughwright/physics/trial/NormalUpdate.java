// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Independent standard normals z, seen through y = J z + noise: what is then known of them (the
 * normal linear model; Gelman et al., Bayesian Data Analysis, chapter on regression; from memory).
 */
final class NormalUpdate {
  private final RealMatrix rows;
  private final RealVector seen;
  private final DecompositionSolver solver;

  /**
   * @param rows J, shape (observations, unknowns)
   * @param seen y, shape (observations)
   * @param noise variances of the noise, shape (observations)
   */
  NormalUpdate(double[][] rows, double[] seen, double[] noise) {
    this.seen = new ArrayRealVector(seen, false);
    if (rows.length == 0) {
      this.rows = null;
      solver = null;
      return;
    }
    this.rows = new Array2DRowRealMatrix(rows, false);
    RealMatrix spread = this.rows.multiply(this.rows.transpose());
    for (int i = 0; i < noise.length; i++) {
      spread.addToEntry(i, i, noise[i]);
    }
    solver = new CholeskyDecomposition(spread).getSolver();
  }

  /** Expected value of a sum of unknowns with given weights. */
  double mean(double[] weights) {
    return rows == null ? 0 : rows.operate(new ArrayRealVector(weights, false)).dotProduct(gain());
  }

  private RealVector gain() {
    return solver.solve(seen);
  }

  /** Expected values of all unknowns, of which there are so many. */
  double[] means(int unknowns) {
    return rows == null ? new double[unknowns] : rows.preMultiply(gain()).toArray();
  }

  /** Variance of a sum of unknowns with given weights. */
  double variance(double[] weights) {
    RealVector sum = new ArrayRealVector(weights, false);
    double before = sum.dotProduct(sum);
    if (rows == null) {
      return before;
    }
    RealVector through = rows.operate(sum);
    return before - through.dotProduct(solver.solve(through));
  }
}
