// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntBiFunction;

/**
 * A section of radius 1 as a fine square raster whose fibres keep their plastic strain and are
 * loaded in small steps; stresses and strains in those at which flow begins. Shares nothing with
 * the laws under test.
 */
final class BruteSection {
  /** Nothing there, wood that flows, wood that does not. */
  static final int NOTHING = 0;

  static final int GREEN = 1;
  static final int DEAD = 2;

  private final double cell;
  private final List<double[]> places = new ArrayList<>();
  private final List<Boolean> flows = new ArrayList<>();
  private final double[] plastic;

  /** Moments about the axes 1 and 2, and the strain of the axis. */
  record Bent(double m1, double m2, double middle) {}

  BruteSection(int rows, ToIntBiFunction<Double, Double> kind) {
    cell = 2.0 / rows;
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < rows; j++) {
        double p1 = -1 + (i + 0.5) * cell;
        double p2 = -1 + (j + 0.5) * cell;
        if (p1 * p1 + p2 * p2 < 1 && kind.applyAsInt(p1, p2) != NOTHING) {
          places.add(new double[] {p1, p2});
          flows.add(kind.applyAsInt(p1, p2) == GREEN);
        }
      }
    }
    plastic = new double[places.size()];
  }

  private double stress(int i, double strain) {
    double elastic = strain - plastic[i];
    return flows.get(i) ? Math.max(-1, elastic) : elastic;
  }

  /** Bends to a curvature and keeps what flows there. */
  Bent bendTo(double e1, double e2) {
    double low = -3 - 2 * Math.hypot(e1, e2);
    double high = -low;
    for (int n = 0; n < 45; n++) {
      double middle = (low + high) / 2;
      double force = 0;
      for (int i = 0; i < plastic.length; i++) {
        force += stress(i, strain(i, middle, e1, e2));
      }
      low = force < 0 ? middle : low;
      high = force < 0 ? high : middle;
    }
    double m1 = 0;
    double m2 = 0;
    for (int i = 0; i < plastic.length; i++) {
      double strain = strain(i, low, e1, e2);
      double stress = stress(i, strain);
      m1 += stress * places.get(i)[1] * cell * cell;
      m2 -= stress * places.get(i)[0] * cell * cell;
      plastic[i] = strain - stress;
    }
    return new Bent(m1, m2, low);
  }

  private double strain(int i, double middle, double e1, double e2) {
    return middle + e1 * places.get(i)[1] - e2 * places.get(i)[0];
  }
}
