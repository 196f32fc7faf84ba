// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * A rising function of one number from 0, as cubics through values and slopes at even steps
 * (Hermite interpolation; Press and others, Numerical Recipes, from memory).
 */
final class CubicTable {
  /** Newton's method on one cubic from a good guess is at rounding after so many steps. */
  private static final int STEPS = 5;

  private final double cell;
  private final int cells;
  private final double[] value;
  private final double[] rise;

  /** Makes room for cells of one width. */
  CubicTable(double cell, int cells) {
    this.cell = cell;
    this.cells = cells;
    value = new double[cells + 1];
    rise = new double[cells + 1];
  }

  /** Sets the value and the slope where cell {@code i} starts. */
  void set(int i, double y, double slope) {
    value[i] = y;
    rise[i] = slope * cell;
  }

  private double square(int i) {
    return 3 * (value[i + 1] - value[i]) - 2 * rise[i] - rise[i + 1];
  }

  private double cube(int i) {
    return 2 * (value[i] - value[i + 1]) + rise[i] + rise[i + 1];
  }

  private int cellOf(double u) {
    return Math.min(cells - 1, (int) (u / cell));
  }

  double value(double u) {
    int i = cellOf(u);
    double t = u / cell - i;
    return value[i] + t * (rise[i] + t * (square(i) + t * cube(i)));
  }

  /** The slope at u over 2 u: the rate over the square of u. */
  double slopeOverDouble(double u) {
    int i = cellOf(u);
    double t = u / cell - i;
    double bend = 2 * square(i) + 3 * t * cube(i);
    // in the first cell the slope starts from nothing, and u cancels
    return i == 0 ? bend / (2 * cell * cell) : (rise[i] + t * bend) / (2 * u * cell);
  }

  /** Integral of the value over the square of u, from the start of a cell to a part of it. */
  double workInCell(int i, double t) {
    double b = square(i);
    double c = cube(i);
    double even = t * (value[i] + t * (rise[i] / 2 + t * (b / 3 + t * c / 4)));
    double odd = t * t * (value[i] / 2 + t * (rise[i] / 3 + t * (b / 4 + t * c / 5)));
    return 2 * cell * cell * (i * even + odd);
  }

  /** Where the function has a value that lies in the table. */
  double inverse(double y) {
    int low = 0;
    int high = cells - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (value[middle] <= y) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    double a = rise[low];
    double b = square(low);
    double c = cube(low);
    double aim = y - value[low];
    double share = aim / (value[low + 1] - value[low]);
    double t = low == 0 ? Math.sqrt(share) : share;
    for (int n = 0; n < STEPS && t > 0; n++) {
      double slope = a + t * (2 * b + t * 3 * c);
      t = Math.min(1, Math.max(0, t - (t * (a + t * (b + t * c)) - aim) / slope));
    }
    return (low + t) * cell;
  }
}
