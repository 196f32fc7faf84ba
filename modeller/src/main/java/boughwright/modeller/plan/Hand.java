// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

/** The hand of a winding. */
public enum Hand {
  /** Like the thread of a common screw: seen from either end it winds away clockwise. */
  RIGHT,
  /** The mirror image of right. */
  LEFT
}
