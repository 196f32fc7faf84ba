// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Quadratic shape functions of an element (nodes at its start, middle and end) at its two Gauss
 * points.
 *
 * <p>Source: any finite element text, such as Zienkiewicz, Taylor and Zhu, The Finite Element
 * Method, one-dimensional Lagrange elements (from memory).
 */
final class Shape {
  private Shape() {}

  /** Values at the Gauss points, shape (2)(3). */
  static final double[][] N = {values(RodMesh.GAUSS_1), values(RodMesh.GAUSS_2)};

  /** Derivatives with respect to the fraction of the length, shape (2)(3). */
  static final double[][] D = {slopes(RodMesh.GAUSS_1), slopes(RodMesh.GAUSS_2)};

  private static double[] values(double x) {
    return new double[] {(1 - x) * (1 - 2 * x), 4 * x * (1 - x), x * (2 * x - 1)};
  }

  private static double[] slopes(double x) {
    return new double[] {4 * x - 3, 4 - 8 * x, 4 * x - 1};
  }
}
