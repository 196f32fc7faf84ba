// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Shape functions of an element at its two Gauss points: linear from its start and its end, and a
 * bubble that is one in its middle and nothing at its ends. Together they are all quadratics.
 *
 * <p>Source: any finite element text, such as Zienkiewicz, Taylor and Zhu, The Finite Element
 * Method, hierarchical one-dimensional elements (from memory).
 */
final class Shape {
  private Shape() {}

  /** Start, bubble and end at the Gauss points, shape (2)(3). */
  static final double[][] N = {values(RodMesh.GAUSS_1), values(RodMesh.GAUSS_2)};

  /** Derivatives with respect to the fraction of the length, shape (2)(3). */
  static final double[][] D = {slopes(RodMesh.GAUSS_1), slopes(RodMesh.GAUSS_2)};

  private static double[] values(double x) {
    return new double[] {1 - x, 4 * x * (1 - x), x};
  }

  private static double[] slopes(double x) {
    return new double[] {-1, 4 - 8 * x, 1};
  }
}
