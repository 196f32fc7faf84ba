// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.picture.PhotoHeader.Colour;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;

/**
 * Printing colours as colours of a screen, without a profile: paper white times what each ink lets
 * through. Files of four colours hold them upside down (0 is full ink), as is usual.
 */
final class PrintColours {
  private PrintColours() {}

  static BufferedImage onScreen(Raster raster, Colour colour) {
    int width = raster.getWidth();
    int height = raster.getHeight();
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] in = new int[4 * width];
    int[] out = new int[width];
    for (int y = 0; y < height; y++) {
      raster.getPixels(raster.getMinX(), raster.getMinY() + y, width, 1, in);
      for (int x = 0; x < width; x++) {
        out[x] = pixel(in, 4 * x, colour);
      }
      image.setRGB(0, y, width, 1, out, 0, width);
    }
    return image;
  }

  private static int pixel(int[] in, int at, Colour colour) {
    double first = in[at];
    double second = in[at + 1];
    double third = in[at + 2];
    if (colour == Colour.YCCK) {
      // ITU-T T.871, section 7, gives red, green and blue; the inks are what they lack of white
      // (Adobe Technical Note 5116, from memory)
      double blue = in[at + 1] - 128;
      double red = in[at + 2] - 128;
      second = 255 - (first - 0.344136 * blue - 0.714136 * red);
      third = 255 - (first + 1.772 * blue);
      first = 255 - (first + 1.402 * red);
    }
    double black = in[at + 3] / 255.0;
    return channel(first * black) << 16 | channel(second * black) << 8 | channel(third * black);
  }

  private static int channel(double value) {
    return (int) Math.round(Math.min(255, Math.max(0, value)));
  }
}
