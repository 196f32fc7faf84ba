// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.problem.InputException;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.shell.WindowCommands.Face;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.KeyStroke;

/** Opening, saving, closing. */
final class FileCommands {
  private final MainWindow window;
  private final Desk desk;

  FileCommands(MainWindow window, Desk desk) {
    this.window = window;
    this.desk = desk;
  }

  List<Command> all() {
    FileWork files = window.files();
    return List.of(
        face("new", "New tree\u2026", 'N', KeyEvent.VK_N, "Starts a tree from one trunk segment")
            .does(() -> new NewTreeSheet(window).show()),
        face("open", "Open\u2026", 'O', KeyEvent.VK_O, "Opens a tree file").does(this::open),
        new Face(
                "file.examples",
                "Examples\u2026",
                'E',
                Optional.empty(),
                "Opens a tree that comes with the program, as a copy")
            .does(() -> new StartSheet(window).show()),
        new Face(
                "file.sheet",
                "Open tape sheet\u2026",
                'T',
                Optional.empty(),
                "Makes a tree from a table of measures (CSV)")
            .does(this::openSheet),
        face("save", "Save", 'S', KeyEvent.VK_S, "Saves the tree and its plans")
            .does(() -> files.save()),
        shifted("save-as", "Save as\u2026", 'A', KeyEvent.VK_S, "Saves to another file")
            .does(() -> files.saveAs()),
        shifted("window", "New window", 'W', KeyEvent.VK_N, "Opens a window beside this one")
            .does(this::newWindow),
        face("close", "Close window", 'C', KeyEvent.VK_W, "Asks about what is not saved, once")
            .does(() -> desk.close(window)),
        face("quit", "Quit", 'Q', KeyEvent.VK_Q, "Closes all windows").does(desk::quit));
  }

  private static Face face(String id, String name, char mnemonic, int key, String tip) {
    return new Face("file." + id, name, mnemonic, Optional.of(Keys.menu(key)), tip);
  }

  private static Face shifted(String id, String name, char mnemonic, int key, String tip) {
    KeyStroke stroke = Keys.menuShift(key);
    return new Face("file." + id, name, mnemonic, Optional.of(stroke), tip);
  }

  private Optional<Path> near() {
    return window.workspace().file().or(() -> desk.settings().recent().stream().findFirst());
  }

  private void open() {
    FilePick.toOpen(window, near(), FilePick.Sort.TREE).ifPresent(path -> openFile(window, path));
  }

  private void openSheet() {
    FilePick.toOpen(window, near(), FilePick.Sort.SHEET).ifPresent(path -> openFile(window, path));
  }

  /** Opens a file of any sort that is known by its end, into a window. */
  static boolean openFile(MainWindow window, Path path) {
    String name = path.getFileName().toString();
    FileWork.Source source =
        FilePick.Sort.SHEET.has(name) ? () -> Opened.sheet(path) : () -> Opened.file(path);
    return window.files().open(name, source);
  }

  private void newWindow() {
    try {
      desk.open(Opened.example(Example.HORNBEAM));
    } catch (InputException e) {
      Trouble.tell(window, "No new window", e.problems());
    }
  }
}
