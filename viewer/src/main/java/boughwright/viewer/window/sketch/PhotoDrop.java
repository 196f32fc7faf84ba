// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Takes photos that are dropped on the panel. */
final class PhotoDrop extends TransferHandler {
  private static final long serialVersionUID = 1L;

  private final transient Consumer<Path> taken;

  PhotoDrop(Consumer<Path> taken) {
    this.taken = taken;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  public boolean importData(TransferSupport support) {
    if (!canImport(support)) {
      return false;
    }
    try {
      Object files = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      for (Object file : (List<?>) files) {
        taken.accept(((File) file).toPath());
      }
      return true;
    } catch (UnsupportedFlavorException | IOException e) {
      return false;
    }
  }
}
