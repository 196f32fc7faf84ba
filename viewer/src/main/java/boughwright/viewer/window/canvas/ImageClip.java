// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Keys;
import java.awt.Component;
import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A picture on its way to the clipboard.
 *
 * @param image the picture
 */
record ImageClip(Image image) implements Transferable {

  /** The command that copies. */
  static Command command(Runnable copy, BooleanSupplier enabled) {
    return new Command(
        "picture.copy",
        "Copy the picture",
        'p',
        Optional.of(Keys.menuShift(KeyEvent.VK_C)),
        "Copy what is seen to the clipboard, to paste it elsewhere",
        copy,
        enabled);
  }

  /** Puts a picture on the clipboard of the system that a component is on. */
  static void copy(Image image, Component on) {
    on.getToolkit().getSystemClipboard().setContents(new ImageClip(image), null);
  }

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
