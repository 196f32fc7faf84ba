// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Linear observations of two groups of independent standard normal variables, what is shared by all
 * limbs and what is not, and draws from what they leave of the prior: a draw from the prior is
 * corrected by what it would have been seen to miss (Matheron's rule; Rasmussen and Williams 2006,
 * Gaussian Processes for Machine Learning, eq. 2.19, gives the same conditional).
 */
final class Evidence {

  /**
   * One observation: {@code value = shared . o + own . i + noise}.
   *
   * @param value what was seen [1]
   * @param shared weights of the shared variables
   * @param own weights of the others
   * @param noiseVariance variance of the noise
   */
  record Observation(double value, double[] shared, double[] own, double noiseVariance) {}

  private final int count;
  private final RealMatrix shared;
  private final RealMatrix own;
  private final RealVector seen;
  private final double[] noise;
  private final DecompositionSolver bothSolver;
  private final DecompositionSolver ownSolver;

  Evidence(List<Observation> observations) {
    count = observations.size();
    if (count == 0) {
      shared = null;
      own = null;
      seen = null;
      noise = new double[0];
      bothSolver = null;
      ownSolver = null;
      return;
    }
    shared = rows(observations.stream().map(Observation::shared).toArray(double[][]::new));
    own = rows(observations.stream().map(Observation::own).toArray(double[][]::new));
    seen = new ArrayRealVector(observations.stream().mapToDouble(Observation::value).toArray());
    noise = observations.stream().mapToDouble(o -> Math.sqrt(o.noiseVariance())).toArray();
    RealMatrix ownAndNoise = own.multiply(own.transpose());
    for (int k = 0; k < count; k++) {
      ownAndNoise.addToEntry(k, k, noise[k] * noise[k]);
    }
    ownSolver = new CholeskyDecomposition(ownAndNoise).getSolver();
    bothSolver =
        new CholeskyDecomposition(ownAndNoise.add(shared.multiply(shared.transpose()))).getSolver();
  }

  private static RealMatrix rows(double[][] rows) {
    return new Array2DRowRealMatrix(rows, false);
  }

  boolean isEmpty() {
    return count == 0;
  }

  /** Mean of the shared variables, shape as given. */
  double[] sharedMean(int size) {
    return isEmpty() ? new double[size] : shared.preMultiply(bothSolver.solve(seen)).toArray();
  }

  /** Mean of the other variables. */
  double[] ownMean(int size) {
    return isEmpty() ? new double[size] : own.preMultiply(bothSolver.solve(seen)).toArray();
  }

  /**
   * Makes a draw of the shared variables from the prior one from what the evidence leaves.
   *
   * @param drawn standard normals, written over
   * @param spareOwn standard normals standing for the other variables
   * @param spareNoise standard normals standing for the noise, at least one per observation
   */
  void correctShared(double[] drawn, double[] spareOwn, double[] spareNoise) {
    if (!isEmpty()) {
      correct(drawn, shared, missed(drawn, spareOwn, spareNoise), bothSolver);
    }
  }

  /**
   * The same for the other variables, the shared ones being as drawn.
   *
   * @param drawn standard normals, written over
   * @param sharedDrawn shared variables from {@link #correctShared}
   * @param spareNoise standard normals standing for the noise, at least one per observation
   */
  void correctOwn(double[] drawn, double[] sharedDrawn, double[] spareNoise) {
    if (!isEmpty()) {
      correct(drawn, own, missed(sharedDrawn, drawn, spareNoise), ownSolver);
    }
  }

  private RealVector missed(double[] o, double[] i, double[] spareNoise) {
    RealVector missed = seen.subtract(shared.operate(view(o))).subtract(own.operate(view(i)));
    for (int k = 0; k < count; k++) {
      missed.addToEntry(k, -noise[k] * spareNoise[k]);
    }
    return missed;
  }

  private static RealVector view(double[] values) {
    return new ArrayRealVector(values, false);
  }

  private static void correct(
      double[] drawn, RealMatrix weights, RealVector missed, DecompositionSolver solver) {
    double[] change = weights.preMultiply(solver.solve(missed)).toArray();
    Arrays.setAll(drawn, k -> drawn[k] + change[k]);
  }

  /** How many observations there are. */
  int count() {
    return count;
  }
}
