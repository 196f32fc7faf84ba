// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.gl.LiveRenderer;
import boughwright.viewer.gl.Raster;
import boughwright.viewer.picture.SceneWords;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Optional;

/**
 * A picture of the tree, ready to be painted.
 *
 * @param frame what was drawn
 * @param wood its pixels, clear where there is no tree
 * @param words marks and words over it; empty while it moves
 */
record LivePicture(LiveRenderer.Frame frame, BufferedImage wood, Optional<BufferedImage> words) {

  /** Any thread may call. */
  static LivePicture of(LiveRenderer.Frame frame, SceneWords.Wanted wanted) {
    Raster raster = frame.raster();
    BufferedImage wood =
        new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_ARGB_PRE);
    raster.copyPixels(((DataBufferInt) wood.getRaster().getDataBuffer()).getData());
    Optional<BufferedImage> words =
        raster.knowsDepth()
            ? Optional.of(SceneWords.sheet(frame.scene(), raster, wanted))
            : Optional.empty();
    return new LivePicture(frame, wood, words);
  }
}
