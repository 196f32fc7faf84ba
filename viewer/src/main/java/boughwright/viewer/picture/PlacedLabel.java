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

  /**
   * Whether the line to these words, from where it begins to be drawn, runs through a rectangle.
   */
  boolean runsThrough(Rect rect) {
    double[] end = meets();
    double length = Math.hypot(end[0] - x, end[1] - y);
    if (length <= label.clearance()) {
      return false;
    }
    double part = label.clearance() / length;
    return new java.awt.geom.Rectangle2D.Double(rect.x(), rect.y(), rect.width(), rect.height())
        .intersectsLine(x + part * (end[0] - x), y + part * (end[1] - y), end[0], end[1]);
  }

  /** Whether the lines of two labels cross. */
  boolean crosses(PlacedLabel other) {
    double[] a = meets();
    double[] b = other.meets();
    return java.awt.geom.Line2D.linesIntersect(x, y, a[0], a[1], other.x, other.y, b[0], b[1]);
  }
}
