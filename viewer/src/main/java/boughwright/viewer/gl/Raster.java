// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

/**
 * A drawn image: premultiplied colours on nothing.
 *
 * <p>Immutable.
 */
public final class Raster {
  private final int width;
  private final int height;
  private final int[] pixels;

  Raster(int width, int height, int[] pixels) {
    this.width = width;
    this.height = height;
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

  /** Copies all pixels row by row from the top. */
  public void copyPixels(int[] into) {
    System.arraycopy(pixels, 0, into, 0, pixels.length);
  }
}
