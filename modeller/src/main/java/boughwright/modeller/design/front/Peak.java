// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

/**
 * The best tilt of an azimuth, by its numbers on the grid.
 *
 * @param right number of the tilt to the right
 * @param toward number of the tilt toward the viewer
 * @param score its score [1]
 */
record Peak(int right, int toward, double score) {
  /** The better one; of equal ones the one counted first. */
  static Peak better(Peak one, Peak other) {
    if (one == null || other.score > one.score) {
      return other;
    }
    boolean first =
        other.right < one.right || other.right == one.right && other.toward < one.toward;
    return other.score == one.score && first ? other : one;
  }
}
