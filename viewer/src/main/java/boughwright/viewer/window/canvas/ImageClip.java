// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;

/**
 * A picture on its way to the clipboard.
 *
 * @param image the picture
 */
record ImageClip(Image image) implements Transferable {
  @Override
  public DataFlavor[] getTransferDataFlavors() {
    return new DataFlavor[] {DataFlavor.imageFlavor};
  }

  @Override
  public boolean isDataFlavorSupported(DataFlavor flavour) {
    return DataFlavor.imageFlavor.equals(flavour);
  }

  @Override
  public Image getTransferData(DataFlavor flavour) throws UnsupportedFlavorException {
    if (!isDataFlavorSupported(flavour)) {
      throw new UnsupportedFlavorException(flavour);
    }
    return image;
  }
}
