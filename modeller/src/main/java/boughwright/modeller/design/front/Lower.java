// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

/** How much a height counts as below the crown: all of it up to half way, nothing near the apex. */
final class Lower {
  /** Heights between which the weight goes from 1 to 0; its middle is at two thirds. Choice. */
  private static final double FULL = 0.53;

  private static final double NONE = 0.8;

  private Lower() {}

  /** Weight of a height along the trunk's chord, 0 at the base and 1 at the apex [1]. */
  static double weight(double height) {
    double part = Math.min(1, Math.max(0, (height - FULL) / (NONE - FULL)));
    return 1 - part * part * (3 - 2 * part);
  }
}
