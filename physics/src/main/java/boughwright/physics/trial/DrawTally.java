// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * Sums over draws from which the correlation of the margin against cracking with each input
 * follows. Tallies of parts are added in a fixed order, so that the answer does not depend on how
 * many processors worked.
 */
final class DrawTally {
  private long count;
  private double sum;
  private double squares;
  private final double[] inputSum;
  private final double[] inputSquares;
  private final double[] products;

  DrawTally(int inputs) {
    inputSum = new double[inputs];
    inputSquares = new double[inputs];
    products = new double[inputs];
  }

  void note(double margin, double[] inputs) {
    count++;
    sum += margin;
    squares += margin * margin;
    for (int k = 0; k < inputs.length; k++) {
      inputSum[k] += inputs[k];
      inputSquares[k] += inputs[k] * inputs[k];
      products[k] += inputs[k] * margin;
    }
  }

  void add(DrawTally other) {
    count += other.count;
    sum += other.sum;
    squares += other.squares;
    for (int k = 0; k < inputSum.length; k++) {
      inputSum[k] += other.inputSum[k];
      inputSquares[k] += other.inputSquares[k];
      products[k] += other.products[k];
    }
  }

  long count() {
    return count;
  }

  /** Variance of the margin [1]. */
  double variance() {
    return count < 2 ? 0 : Math.max(0, squares / count - sum / count * (sum / count));
  }

  /** Part of the variance of the margin that goes with an input: the squared correlation [1]. */
  double share(int input) {
    if (count < 2) {
      return 0;
    }
    double mean = sum / count;
    double inputMean = inputSum[input] / count;
    double inputVariance = inputSquares[input] / count - inputMean * inputMean;
    double covariance = products[input] / count - mean * inputMean;
    double both = variance() * inputVariance;
    return both > 1e-30 ? Math.min(1, covariance * covariance / both) : 0;
  }
}
