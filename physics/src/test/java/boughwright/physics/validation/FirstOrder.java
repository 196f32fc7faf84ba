// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937a;

/**
 * The first-order reliability method: the point of the limit state nearest to the origin of
 * independent standard normals, by the iteration of Hasofer and Lind (1974, ASCE J. Eng. Mech. 100)
 * and Rackwitz and Fiessler (1978, Computers and Structures 9); its distance is the reliability
 * index. Steps are halved until they better the distance and the limit state taken together (Zhang
 * and Der Kiureghian 1997, Reliability and Optimization of Structural Systems), for a plain step
 * may run past the point.
 */
final class FirstOrder {
  private static final double STEP = 5e-3;
  private static final double CLOSE = 1e-3;
  private static final int MOST = 60;
  private static final int HALVINGS = 8;

  private FirstOrder() {}

  /**
   * The reliability index.
   *
   * @param limitState above 0 where it holds
   * @param dimension number of variables
   */
  static double index(ToDoubleFunction<double[]> limitState, int dimension) {
    double sign = Math.signum(limitState.applyAsDouble(new double[dimension]));
    return sign * point(limitState, dimension).getNorm();
  }

  /**
   * The probability of failing, by importance sampling around the nearest point of a limit state
   * whose curvature first order leaves out (Melchers and Beck 2018, Structural Reliability Analysis
   * and Prediction, ch. 3).
   *
   * @param draws how many
   */
  static double probability(ToDoubleFunction<double[]> limitState, int dimension, int draws) {
    RealVector centre = point(limitState, dimension);
    RandomGenerator random = new Well19937a(11);
    double sum = 0;
    for (int n = 0; n < draws; n++) {
      double[] u = new double[dimension];
      for (int k = 0; k < dimension; k++) {
        u[k] = centre.getEntry(k) + random.nextGaussian();
      }
      if (limitState.applyAsDouble(u) <= 0) {
        double along = centre.dotProduct(new ArrayRealVector(u, false));
        sum += Math.exp(centre.dotProduct(centre) / 2 - along);
      }
    }
    return sum / draws;
  }

  private static RealVector point(ToDoubleFunction<double[]> limitState, int dimension) {
    RealVector u = new ArrayRealVector(dimension);
    for (int i = 0; i < MOST; i++) {
      double value = limitState.applyAsDouble(u.toArray());
      RealVector slope = gradient(limitState, u);
      double squared = slope.dotProduct(slope);
      RealVector aim = slope.mapMultiply((slope.dotProduct(u) - value) / squared);
      RealVector next = better(limitState, u, aim, 2 * aim.getNorm() / slope.getNorm());
      double moved = next.subtract(u).getNorm();
      u = next;
      if (moved < CLOSE) {
        return u;
      }
    }
    throw new IllegalStateException("the iteration does not settle: " + u);
  }

  /** The first point on the way to an aim, halving it, at which the merit is lower. */
  private static RealVector better(
      ToDoubleFunction<double[]> limitState, RealVector u, RealVector aim, double weight) {
    double before = merit(limitState, u, weight);
    RealVector step = aim.subtract(u);
    RealVector next = aim;
    for (int k = 0; k < HALVINGS && merit(limitState, next, weight) > before; k++) {
      step = step.mapMultiply(0.5);
      next = u.add(step);
    }
    return next;
  }

  private static double merit(ToDoubleFunction<double[]> limitState, RealVector u, double weight) {
    return 0.5 * u.dotProduct(u) + weight * Math.abs(limitState.applyAsDouble(u.toArray()));
  }

  private static RealVector gradient(ToDoubleFunction<double[]> limitState, RealVector u) {
    RealVector slope = new ArrayRealVector(u.getDimension());
    for (int k = 0; k < u.getDimension(); k++) {
      double[] up = u.toArray();
      double[] down = u.toArray();
      up[k] += STEP;
      down[k] -= STEP;
      slope.setEntry(
          k, (limitState.applyAsDouble(up) - limitState.applyAsDouble(down)) / (2 * STEP));
    }
    return slope;
  }
}
