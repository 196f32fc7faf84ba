// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

/**
 * A rectangle on a page.
 *
 * @param x left edge [pixels]
 * @param y upper edge [pixels]
 * @param width width [pixels]
 * @param height height [pixels]
 */
record Rect(double x, double y, double width, double height) {
  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  double centreX() {
    return x + width / 2;
  }

  boolean overlaps(Rect other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  boolean contains(Rect other) {
    return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
  }

  Rect grown(double by) {
    return new Rect(x - by, y - by, width + 2 * by, height + 2 * by);
  }

  /** The point of this rectangle nearest to a point: x, then y. */
  double[] nearest(double px, double py) {
    return new double[] {Math.min(Math.max(px, x), right()), Math.min(Math.max(py, y), bottom())};
  }
}
