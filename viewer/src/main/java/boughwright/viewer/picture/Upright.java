// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Turns a photo as the camera was held (Exif 2.3, table 6). */
final class Upright {
  private Upright() {}

  static BufferedImage of(BufferedImage stored, CameraNotes notes) {
    BufferedImage plain = plain(stored);
    if (notes.orientation() == 1) {
      return plain;
    }
    int width = plain.getWidth();
    int height = plain.getHeight();
    boolean sideways = notes.isSideways();
    BufferedImage out =
        new BufferedImage(sideways ? height : width, sideways ? width : height, plain.getType());
    int[] from = ((DataBufferInt) plain.getRaster().getDataBuffer()).getData();
    int[] to = ((DataBufferInt) out.getRaster().getDataBuffer()).getData();
    int row = out.getWidth();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int there =
            switch (notes.orientation()) {
              case 2 -> y * row + (width - 1 - x);
              case 3 -> (height - 1 - y) * row + (width - 1 - x);
              case 4 -> (height - 1 - y) * row + x;
              case 5 -> x * row + y;
              case 6 -> x * row + (height - 1 - y);
              case 7 -> (width - 1 - x) * row + (height - 1 - y);
              default -> (width - 1 - x) * row + y;
            };
        to[there] = from[y * width + x];
      }
    }
    return out;
  }

  /** The same picture with a whole number for each pixel. */
  private static BufferedImage plain(BufferedImage image) {
    int type =
        image.getColorModel().hasAlpha() ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
    if (image.getType() == type) {
      return image;
    }
    BufferedImage plain = new BufferedImage(image.getWidth(), image.getHeight(), type);
    Graphics2D pen = plain.createGraphics();
    pen.drawImage(image, 0, 0, null);
    pen.dispose();
    return plain;
  }
}
