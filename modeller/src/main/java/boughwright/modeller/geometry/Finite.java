// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.geometry;

/** Guards of the numeric records. */
final class Finite {
  private Finite() {}

  static void require(double value, String name) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", a finite number is expected");
    }
  }
}
