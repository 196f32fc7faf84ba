// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

/**
 * A label that has found its place.
 *
 * @param label the words
 * @param box where they stand in the view [pixels]
 * @param x the point they belong to, from the left [pixels]
 * @param y the point they belong to, from the top [pixels]
 */
record PlacedLabel(Label label, Rect box, double x, double y) {
  /** Where the line from the point reaches the words: x, then y. */
  double[] meets() {
    return box.nearest(x, y);
  }

  /** Whether the lines of two labels cross. */
  boolean crosses(PlacedLabel other) {
    double[] a = meets();
    double[] b = other.meets();
    return java.awt.geom.Line2D.linesIntersect(x, y, a[0], a[1], other.x, other.y, b[0], b[1]);
  }
}
