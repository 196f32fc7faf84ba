// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * How far beside a cut across a limb its wood is taken to carry nothing above the floor.
 *
 * <p>Stress spreads again from the floor at 45 degrees (assumption). In place of that slope a
 * stretch of full depth is counted that bends as much: its length is the integral of 1/I - 1/I₀ up
 * the slope over 1/I - 1/I₀ at the floor.
 */
final class CutFlank {
  /** Steps up the slope, an even number for Simpson's rule. */
  private static final int STEPS = 64;

  private CutFlank() {}

  /**
   * Length of that stretch on each side of the cut [m].
   *
   * @param radius radius of the wood [m]
   * @param depth depth of the cut, less than the wood is thick [m]
   */
  static double length(double radius, double depth) {
    double sum = 0;
    for (int k = 0; k <= STEPS; k++) {
      double weight = k == 0 || k == STEPS ? 1 : k % 2 == 1 ? 4 : 2;
      sum += weight * softer(depth * k / STEPS / radius);
    }
    return depth / STEPS / 3 * sum / softer(depth / radius);
  }

  /** Bending of a disc of radius one beyond that of the whole, per moment over E. */
  private static double softer(double depth) {
    double half = Math.acos(1 - depth);
    double c = Math.cos(half);
    double s = Math.sin(half);
    // area and moments of the part beyond the chord, about the middle of the disc
    double area = half - s * c;
    double first = 2 * s * s * s / 3;
    double second = (half - s * c * (1 - 2 * s * s)) / 4;
    double left = Math.PI / 4 - second - first * first / (Math.PI - area);
    return 1 / left - 4 / Math.PI;
  }
}
