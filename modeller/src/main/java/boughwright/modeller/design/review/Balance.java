// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Point3;

/**
 * Where the middle of the wood above the roots stands, seen from the front, or from azimuth 0
 * without one. Wood only: foliage is not measured.
 *
 * @param right to the right of the trunk base [m]
 * @param behind behind the trunk base [m]
 */
public record Balance(double right, double behind) {
  public Balance {
    if (!Double.isFinite(right) || !Double.isFinite(behind)) {
      throw new IllegalArgumentException("middle at " + right + ", " + behind);
    }
  }

  /** Of a tapered piece [m3]. */
  static double volume(Frustum piece) {
    double a = piece.startRadius();
    double b = piece.endRadius();
    return Math.PI / 3 * piece.length() * (a * a + a * b + b * b);
  }

  /** Centroid of a tapered piece [m, tree frame]. */
  static Point3 middle(Frustum piece) {
    double a = piece.startRadius();
    double b = piece.endRadius();
    double part = (a * a + 2 * a * b + 3 * b * b) / (4 * (a * a + a * b + b * b));
    return piece.start().toward(piece.end(), part);
  }
}
