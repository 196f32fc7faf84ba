// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A moment-curvature line as parallel elements, each elastic up to its own moment and perfectly
 * plastic beyond (W. D. Iwan, 1966; G. Masing, 1926). Unloading follows the same line at twice its
 * size, which is what fibres that flow both ways alike do.
 *
 * @param stiffness stiffness of each element [N m2]
 * @param limit moment at which each flows [N m]
 */
record CoilElements(double[] stiffness, double[] limit) {
  /** Spacing of breakpoints over the square of the curvature, both over the first one [1]. */
  private static final double FIRST = 0.06;

  /** Largest spacing of breakpoints over the curvature [1]. */
  private static final double MOST = 0.3;

  /**
   * Elements that meet a line at breakpoints of its curvature; beyond the last it is level.
   *
   * @param line moment from curvature, concave and rising [1/m] to [N m]
   * @param yield curvature at which the line leaves straightness [1/m]
   * @param last the last breakpoint [1/m]
   */
  static CoilElements of(DoubleUnaryOperator line, double yield, double last) {
    List<Double> at = new ArrayList<>(List.of(0.0, yield));
    for (double x = yield; x < last; ) {
      x = Math.min(last, x + Math.min(FIRST * x * x / yield, MOST * x));
      at.add(x);
    }
    int count = at.size() - 1;
    double[] slope = new double[count + 1];
    for (int j = 0; j < count; j++) {
      double rise = line.applyAsDouble(at.get(j + 1)) - line.applyAsDouble(at.get(j));
      slope[j] = rise / (at.get(j + 1) - at.get(j));
    }
    double[] stiffness = new double[count];
    double[] limit = new double[count];
    for (int j = 0; j < count; j++) {
      stiffness[j] = Math.max(0, slope[j] - slope[j + 1]);
      limit[j] = stiffness[j] * at.get(j + 1);
    }
    return new CoilElements(stiffness, limit);
  }

  int count() {
    return stiffness.length;
  }

  /** The same elements, which flow at a part of their moments. */
  CoilElements ofStrength(double part) {
    double[] scaled = limit.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= part;
    }
    return new CoilElements(stiffness, scaled);
  }

  /** A line between two that were made with as many elements, weighted. */
  static CoilElements mixed(CoilElements one, double part, CoilElements other, double otherPart) {
    double[] stiffness = new double[one.count()];
    double[] limit = new double[one.count()];
    for (int i = 0; i < stiffness.length; i++) {
      stiffness[i] = part * one.stiffness[i] + otherPart * other.stiffness[i];
      limit[i] = part * one.limit[i] + otherPart * other.limit[i];
    }
    return new CoilElements(stiffness, limit);
  }

  /** Stiffness of all elements while none flows [N m2]. */
  double whole() {
    return sum(stiffness);
  }

  /** The moment that no curvature exceeds [N m]. */
  double most() {
    return sum(limit);
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
