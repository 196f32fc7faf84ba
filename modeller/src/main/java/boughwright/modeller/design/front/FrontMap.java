// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/**
 * The score over azimuth and tilt: for each azimuth and each tilt one way, the best over all tilts
 * the other way. Immutable.
 */
public final class FrontMap {
  private final FrontGrid grid;

  /** Shape: azimuths, then tilts toward the viewer. */
  private final double[][] forward;

  /** Shape: azimuths, then tilts to the right. */
  private final double[][] sideways;

  private FrontMap(FrontGrid grid, double[][] forward, double[][] sideways) {
    this.grid = grid;
    this.forward = forward;
    this.sideways = sideways;
  }

  /** Collects scores; each azimuth by one thread at a time. */
  static final class Collector {
    private final FrontGrid grid;
    private final double[][] forward;
    private final double[][] sideways;

    Collector(FrontGrid grid) {
      this.grid = grid;
      forward = filled(grid.azimuths(), grid.forwardCount());
      sideways = filled(grid.azimuths(), grid.sidewaysCount());
    }

    private static double[][] filled(int rows, int columns) {
      double[][] table = new double[rows][columns];
      for (double[] row : table) {
        Arrays.fill(row, Double.NEGATIVE_INFINITY);
      }
      return table;
    }

    void add(int azimuth, int right, int toward, double score) {
      forward[azimuth][toward] = Math.max(forward[azimuth][toward], score);
      sideways[azimuth][right] = Math.max(sideways[azimuth][right], score);
    }

    /** The map; nothing is added any more. */
    FrontMap map() {
      return new FrontMap(grid, forward, sideways);
    }
  }

  public FrontGrid grid() {
    return grid;
  }

  /** The best score of an azimuth and a tilt toward the viewer, by their numbers [1]. */
  public double forward(int azimuth, int toward) {
    return forward[azimuth][toward];
  }

  /** The best score of an azimuth and a tilt to the right, by their numbers [1]. */
  public double sideways(int azimuth, int right) {
    return sideways[azimuth][right];
  }

  /** The best score of an azimuth, by its number [1]. */
  public double best(int azimuth) {
    return Arrays.stream(forward[azimuth]).max().orElseThrow();
  }

  /** The lowest score of the map [1]. */
  public double lowest() {
    return over(forward, Math::min, over(sideways, Math::min, Double.POSITIVE_INFINITY));
  }

  /** The highest score of the map [1]. */
  public double highest() {
    return over(forward, Math::max, Double.NEGATIVE_INFINITY);
  }

  private static double over(double[][] table, DoubleBinaryOperator choose, double start) {
    return Arrays.stream(table).flatMapToDouble(Arrays::stream).reduce(start, choose);
  }
}
