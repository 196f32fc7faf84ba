// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Focus;
import boughwright.viewer.window.look.Theme;
import java.awt.Component;
import java.awt.Dimension;
import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToIntFunction;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileFilter;

/** Lets a person choose a file. */
final class FilePick {
  static final String TREE_END = ".tree.json";

  private FilePick() {}

  /** What sort of file is meant. */
  enum Sort {
    TREE("Trees (NAME.tree.json)", TREE_END),
    SHEET("Tape sheets (CSV)", ".csv", ".tsv", ".txt"),
    PICTURE("Pictures (PNG)", ".png"),
    FOLDER("Folders");

    private final String words;
    private final String[] ends;

    Sort(String words, String... ends) {
      this.words = words;
      this.ends = ends;
    }

    boolean has(String name) {
      String low = name.toLowerCase(Locale.ROOT);
      for (String end : ends) {
        if (low.endsWith(end)) {
          return true;
        }
      }
      return false;
    }
  }

  /** A file to read. */
  static Optional<Path> toOpen(Component over, Optional<Path> near, Sort sort) {
    JFileChooser chooser = chooser(near, sort);
    return chosen(chooser, asked(over, chooser::showOpenDialog));
  }

  /** A file to write; its name gets the usual end if it has none. */
  static Optional<Path> toSave(Component over, Optional<Path> near, String name) {
    JFileChooser chooser = chooser(near, Sort.TREE);
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), name));
    return chosen(chooser, asked(over, chooser::showSaveDialog)).map(FilePick::ended);
  }

  /** A picture to write; its name gets the usual end if it has none. */
  static Optional<Path> pictureToSave(Component over, Optional<Path> near, String name) {
    JFileChooser chooser = chooser(near, Sort.PICTURE);
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), name));
    return chosen(chooser, asked(over, chooser::showSaveDialog))
        .map(path -> ended(path, Sort.PICTURE.ends[0]));
  }

  /** A folder to write into, which may not be there yet. */
  static Optional<Path> folderToSave(Component over, Optional<Path> near, String name) {
    JFileChooser chooser = chooser(near, Sort.FOLDER);
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), name));
    return chosen(chooser, asked(over, chooser::showSaveDialog));
  }

  private static int asked(Component over, ToIntFunction<Component> show) {
    AtomicInteger answer = new AtomicInteger(JFileChooser.CANCEL_OPTION);
    Focus.lend(over, () -> answer.set(show.applyAsInt(over)));
    return answer.get();
  }

  private static JFileChooser chooser(Optional<Path> near, Sort sort) {
    JFileChooser chooser = new JFileChooser();
    chooser.setName("file.chooser");
    chooser.setPreferredSize(new Dimension(Theme.px(760), Theme.px(480)));
    chooser.getAccessibleContext().setAccessibleName("Choose a file");
    near.map(Path::getParent).ifPresent(folder -> chooser.setCurrentDirectory(folder.toFile()));
    chooser.setFileFilter(
        new FileFilter() {
          @Override
          public boolean accept(File file) {
            return file.isDirectory() || sort.has(file.getName());
          }

          @Override
          public String getDescription() {
            return sort.words;
          }
        });
    return chooser;
  }

  private static Optional<Path> chosen(JFileChooser chooser, int answer) {
    return answer == JFileChooser.APPROVE_OPTION && chooser.getSelectedFile() != null
        ? Optional.of(chooser.getSelectedFile().toPath().toAbsolutePath())
        : Optional.empty();
  }

  private static Path ended(Path path, String end) {
    String name = path.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(end) ? path : path.resolveSibling(name + end);
  }

  private static Path ended(Path path) {
    String name = path.getFileName().toString();
    if (Sort.TREE.has(name)) {
      return path;
    }
    String plain = name.endsWith(".json") ? name.substring(0, name.length() - 5) : name;
    return path.resolveSibling(plain + TREE_END);
  }

  /** A name for the file of a tree, from what the tree is called. */
  static String nameFor(String tree) {
    StringBuilder name = new StringBuilder();
    tree.replaceAll("\\(.*?\\)", "")
        .strip()
        .toLowerCase(Locale.ROOT)
        .codePoints()
        .forEach(
            point -> {
              if (Character.isLetterOrDigit(point)) {
                name.appendCodePoint(point);
              } else if (name.length() > 0 && name.charAt(name.length() - 1) != '-') {
                name.append('-');
              }
            });
    String plain = name.toString().replaceAll("-+$", "");
    return (plain.isEmpty() ? "tree" : plain.substring(0, Math.min(60, plain.length()))) + TREE_END;
  }
}
