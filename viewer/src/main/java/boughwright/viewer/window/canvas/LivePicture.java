// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.gl.LiveRenderer;
import boughwright.viewer.gl.Raster;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * A picture of the tree, ready to be painted.
 *
 * @param frame what was drawn
 * @param wood its pixels, clear where there is no tree
 */
record LivePicture(LiveRenderer.Frame frame, BufferedImage wood) {

  /** Any thread may call. */
  static LivePicture of(LiveRenderer.Frame frame) {
    Raster raster = frame.raster();
    BufferedImage wood =
        new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_ARGB_PRE);
    raster.copyPixels(((DataBufferInt) wood.getRaster().getDataBuffer()).getData());
    return new LivePicture(frame, wood);
  }
}
