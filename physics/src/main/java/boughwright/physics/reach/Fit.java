// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresFactory;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Brings what is missing to its least, by Levenberg and Marquardt. Where nothing holds counts as
 * far away, so that the search turns back.
 */
final class Fit implements ValueAndJacobianFunction {
  /** Longest first step: of the start, or of what is missing where the start is 0 [1]. */
  private static final double FIRST_STEP = 1.5;

  /** How much farther than the start a place counts where nothing holds [1]. */
  private static final double FAR = 10;

  private final Function<double[], Optional<double[]>> missing;
  private final Box box;
  private final Effort effort;
  private final double[] start;
  private final double[] atStart;
  private double[] best;
  private double least;

  /**
   * What the unknowns may be.
   *
   * @param low least of each
   * @param high most of each
   * @param step of each, over which slopes are taken
   */
  record Box(double[] low, double[] high, double[] step) {
    double[] inside(double[] x) {
      double[] in = x.clone();
      for (int k = 0; k < x.length; k++) {
        in[k] = Math.min(high[k], Math.max(low[k], x[k]));
      }
      return in;
    }
  }

  /**
   * How long to search.
   *
   * @param steps most steps, at each of which slopes are taken
   * @param trials most places tried besides those for slopes
   * @param enough improvements smaller than this are not worth another step [m]
   */
  record Effort(int steps, int trials, double enough) {}

  private record Start(double[] at, double[] missing) {}

  private Fit(Function<double[], Optional<double[]>> missing, Box box, Effort effort, Start from) {
    this.missing = missing;
    this.box = box;
    this.effort = effort;
    start = from.at;
    atStart = from.missing;
    best = start;
    least = norm(atStart);
  }

  /**
   * The unknowns that leave the least missing, of all that were tried.
   *
   * @param missing what is missing; empty where nothing holds
   * @param start a place that holds
   */
  static double[] of(
      Function<double[], Optional<double[]>> missing, Box box, Effort effort, double[] start) {
    Optional<double[]> atStart = missing.apply(start);
    if (atStart.isEmpty()) {
      throw new IllegalArgumentException("the search starts where something holds");
    }
    Fit fit = new Fit(missing, box, effort, new Start(start, atStart.get()));
    fit.run();
    return fit.best;
  }

  private void run() {
    try {
      new LevenbergMarquardtOptimizer()
          .withInitialStepBoundFactor(norm(start) > 0 ? FIRST_STEP : FIRST_STEP * norm(atStart))
          .optimize(
              LeastSquaresFactory.create(
                  this,
                  new ArrayRealVector(atStart.length),
                  new ArrayRealVector(start),
                  null,
                  (step, before, now) -> before.getCost() - now.getCost() < effort.enough,
                  effort.trials,
                  effort.steps,
                  true,
                  x -> new ArrayRealVector(box.inside(x.toArray()))));
    } catch (MathIllegalStateException e) {
      // out of steps or of ways to improve: the best that was seen stands
      least = Math.min(least, norm(atStart));
    }
  }

  @Override
  public Pair<RealVector, RealMatrix> value(RealVector point) {
    double[] x = point.toArray();
    return new Pair<>(computeValue(x), computeJacobian(x));
  }

  @Override
  public RealVector computeValue(double[] x) {
    Optional<double[]> found = missing.apply(x);
    if (found.isEmpty()) {
      double[] far = new double[atStart.length];
      Arrays.fill(far, FAR * norm(atStart) / Math.sqrt(far.length));
      return new ArrayRealVector(far, false);
    }
    if (norm(found.get()) < least) {
      least = norm(found.get());
      best = x.clone();
    }
    return new ArrayRealVector(found.get(), false);
  }

  @Override
  public RealMatrix computeJacobian(double[] x) {
    return new Array2DRowRealMatrix(slopes(missing, box, x, computeValue(x).toArray()), false);
  }

  /** Slopes by differences, shape (missing)(unknowns); 0 where nothing holds on either side. */
  static double[][] slopes(
      Function<double[], Optional<double[]>> missing, Box box, double[] x, double[] here) {
    double[][] slopes = new double[here.length][x.length];
    for (int k = 0; k < x.length; k++) {
      double step = x[k] + box.step[k] <= box.high[k] ? box.step[k] : -box.step[k];
      Optional<double[]> there = missing.apply(moved(x, k, step));
      if (there.isEmpty()) {
        step = -step;
        there = missing.apply(moved(x, k, step));
      }
      for (int n = 0; n < here.length && there.isPresent(); n++) {
        slopes[n][k] = (there.get()[n] - here[n]) / step;
      }
    }
    return slopes;
  }

  private static double[] moved(double[] x, int k, double step) {
    double[] there = x.clone();
    there[k] += step;
    return there;
  }

  static double norm(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value * value;
    }
    return Math.sqrt(sum);
  }
}
