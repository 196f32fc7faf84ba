// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.gl.Raster;
import java.awt.geom.Line2D;

/** How much is already drawn in any rectangle of a view, from a table of sums. */
final class Occupancy {
  private static final int FAINT = 24;

  /** Looked at from above, the clear container lies under the whole tree: it takes no room. */
  private static final int FAINT_FROM_ABOVE = 64;

  private static final double STEEP = Math.toRadians(20);

  private final int width;
  private final int height;
  private final int[] sums;

  Occupancy(Raster raster) {
    width = raster.width();
    height = raster.height();
    int faint = raster.camera().angle().elevation() > STEEP ? FAINT_FROM_ABOVE : FAINT;
    sums = new int[(width + 1) * (height + 1)];
    for (int y = 0; y < height; y++) {
      int row = 0;
      for (int x = 0; x < width; x++) {
        row += raster.cover(x, y) > faint ? 1 : 0;
        sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
      }
    }
  }

  /** The share of a rectangle of the view that is drawn on, 0 to 1. */
  double share(Rect rect) {
    int left = clamp(rect.x(), width);
    int right = clamp(rect.right(), width);
    int top = clamp(rect.y(), height);
    int bottom = clamp(rect.bottom(), height);
    int area = Math.max(1, (right - left) * (bottom - top));
    return (double) (at(right, bottom) - at(left, bottom) - at(right, top) + at(left, top)) / area;
  }

  private int at(int x, int y) {
    return sums[y * (width + 1) + x];
  }

  private static int clamp(double value, int most) {
    return (int) Math.min(most, Math.max(0, Math.rint(value)));
  }

  /** What a straight line meets on its way. */
  Met met(Line2D line, double unit) {
    double length = line.getP1().distance(line.getP2());
    int steps = (int) Math.max(1, length / (2 * unit));
    int count = 0;
    int covered = 0;
    boolean before = true;
    for (int n = 0; n <= steps; n++) {
      double x = line.getX1() + (line.getX2() - line.getX1()) * n / steps;
      double y = line.getY1() + (line.getY2() - line.getY1()) * n / steps;
      boolean drawn = share(new Rect(x - unit, y - unit, 2 * unit, 2 * unit)) > 0;
      count += drawn && !before ? 1 : 0;
      covered += drawn ? 1 : 0;
      before = drawn;
    }
    return new Met(count, length * covered / (steps + 1));
  }

  /**
   * What a line meets.
   *
   * @param crossings how often it comes upon something drawn, apart from where it starts
   * @param covered how much of it lies on something drawn [pixels]
   */
  record Met(int crossings, double covered) {}
}
