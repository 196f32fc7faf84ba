// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Writes a rising function of time as a sum of w (1 - exp(-t / T)) with times T even on the log
 * scale and weights above 0: least squares, leaving out what comes out below 0 (Emri and Tschoegl
 * 1993, Rheologica Acta 32, 311, take as many modes a decade; from memory).
 */
final class RelaxationFit {
  private static final int MODES_PER_DECADE = 2;
  private static final int POINTS_PER_DECADE = 8;

  /** Directions in which the points say less than this part of what they say in others [1]. */
  private static final double SAID = 1e-9;

  private RelaxationFit() {}

  /** Weights by their time. */
  static Map<Double, Double> of(DoubleUnaryOperator rising, double from, double to) {
    if (!(from > 0 && to > from) || Double.isInfinite(to)) {
      throw new IllegalArgumentException("no range of times from " + from + " to " + to);
    }
    double[] points = even(from, to, POINTS_PER_DECADE);
    double[] values = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      values[i] = rising.applyAsDouble(points[i]);
    }
    List<Double> times = new ArrayList<>();
    for (double time : even(from, to, MODES_PER_DECADE)) {
      times.add(time);
    }
    double[] weights = solve(points, values, times);
    for (int worst = lowest(weights); worst >= 0; worst = lowest(weights)) {
      times.remove(worst);
      weights = solve(points, values, times);
    }
    Map<Double, Double> found = new TreeMap<>();
    for (int k = 0; k < weights.length; k++) {
      found.put(times.get(k), weights[k]);
    }
    return found;
  }

  private static double[] even(double from, double to, int perDecade) {
    int steps = (int) Math.ceil(perDecade * Math.log10(to / from));
    double[] out = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      out[i] = from * Math.pow(to / from, (double) i / steps);
    }
    return out;
  }

  private static int lowest(double[] weights) {
    int worst = -1;
    for (int k = 0; k < weights.length; k++) {
      if (weights[k] <= 0 && (worst < 0 || weights[k] < weights[worst])) {
        worst = k;
      }
    }
    return worst;
  }

  private static double[] solve(double[] points, double[] values, List<Double> times) {
    if (times.isEmpty()) {
      return new double[0];
    }
    RealMatrix rows = new Array2DRowRealMatrix(points.length, times.size());
    for (int i = 0; i < points.length; i++) {
      for (int k = 0; k < times.size(); k++) {
        rows.setEntry(i, k, -Math.expm1(-points[i] / times.get(k)));
      }
    }
    SingularValueDecomposition parts = new SingularValueDecomposition(rows);
    double[] singular = parts.getSingularValues();
    RealMatrix u = parts.getU();
    double[] weights = new double[times.size()];
    ArrayRealVector aim = new ArrayRealVector(values, false);
    for (int k = 0; k < singular.length && singular[k] > SAID * singular[0]; k++) {
      double part = u.getColumnVector(k).dotProduct(aim) / singular[k];
      for (int j = 0; j < weights.length; j++) {
        weights[j] += part * parts.getV().getEntry(j, k);
      }
    }
    return weights;
  }
}
