// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.sketch.MeasurePanel;
import boughwright.viewer.window.work.Notice;
import java.awt.EventQueue;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.TransferHandler;

/** Takes what is dropped on a window: a tree file or a tape sheet is opened, photos are added. */
final class FileDrop extends TransferHandler {
  private static final long serialVersionUID = 1L;

  private static final List<String> PHOTO_ENDS = List.of(".jpg", ".jpeg", ".png");

  private final MainWindow window;

  FileDrop(MainWindow window) {
    this.window = window;
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
      Object data = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      List<Path> paths = ((List<?>) data).stream().map(File.class::cast).map(File::toPath).toList();
      EventQueue.invokeLater(() -> take(paths));
      return !paths.isEmpty();
    } catch (UnsupportedFlavorException | IOException e) {
      window
          .workspace()
          .say(new Notice(Notice.Kind.FAULT, "What was dropped cannot be read. Use File, Open"));
      return false;
    }
  }

  private void take(List<Path> paths) {
    Optional<MeasurePanel> measure = measure();
    if (measure.isPresent() && paths.stream().allMatch(FileDrop::isPhoto)) {
      window.choose(window.parts().panels().indexOf(measure.get()));
      paths.forEach(measure.get()::addPhoto);
      return;
    }
    if (paths.size() != 1) {
      window
          .workspace()
          .say(
              new Notice(
                  Notice.Kind.FAULT, paths.size() + " files were dropped. Drop one at a time"));
      return;
    }
    Path path = paths.get(0);
    String name = path.getFileName().toString();
    if (name.toLowerCase(Locale.ROOT).endsWith(".json") || FilePick.Sort.SHEET.has(name)) {
      FileCommands.openFile(window, path);
    } else {
      window
          .workspace()
          .say(
              new Notice(
                  Notice.Kind.FAULT,
                  name
                      + " is no tree file (NAME.tree.json), no tape sheet (NAME.csv) and no photo"
                      + " (NAME.jpg, NAME.png)"));
    }
  }

  private Optional<MeasurePanel> measure() {
    return window.parts().panels().stream()
        .filter(MeasurePanel.class::isInstance)
        .map(MeasurePanel.class::cast)
        .findFirst();
  }

  private static boolean isPhoto(Path path) {
    String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
    return PHOTO_ENDS.stream().anyMatch(name::endsWith);
  }
}
