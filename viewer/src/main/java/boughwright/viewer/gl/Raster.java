// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;

/**
 * A drawn image: premultiplied colours on nothing.
 *
 * <p>Immutable.
 */
public final class Raster {
  private final int width;
  private final int height;
  private final int[] pixels;
  private final float[] depths;
  private final Camera camera;

  Raster(Camera camera, int[] pixels, float[] depths) {
    this.camera = camera;
    this.depths = depths;
    this.width = camera.width();
    this.height = camera.height();
    this.pixels = pixels;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** A pixel as premultiplied 0xAARRGGBB, counted from the upper left. */
  public int pixel(int x, int y) {
    return pixels[y * width + x];
  }

  /** How much of a pixel is covered, 0 to 255. */
  public int cover(int x, int y) {
    return pixel(x, y) >>> 24;
  }

  /** Whether the depths were read, so that it is known what hides what. */
  public boolean knowsDepth() {
    return depths.length > 0;
  }

  /**
   * Whether something solid stands in front of a point; no where the depths were not read.
   *
   * @param point the point [m, scene frame]
   * @param skin how deep under a surface a point still counts as seen [m]
   */
  public boolean hides(Point3 point, double skin) {
    if (depths.length == 0) {
      return false;
    }
    Camera.Pixel at = camera.project(point);
    int x = (int) Math.floor(at.x());
    int y = (int) Math.floor(at.y());
    if (x < 0 || y < 0 || x >= width || y >= height) {
      return false;
    }
    Point3 nearer = point.plus(camera.angle().toViewer().times(skin));
    return depths[y * width + x] < camera.windowDepth(nearer);
  }

  public Camera camera() {
    return camera;
  }

  /** Copies all pixels row by row from the top. */
  public void copyPixels(int[] into) {
    System.arraycopy(pixels, 0, into, 0, pixels.length);
  }
}
