// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.problem.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Trees that come with the program; their measures are invented. */
enum Example {
  HORNBEAM(
      "hedge-hornbeam",
      "Hedge hornbeam",
      "Two leaders compete. The thick one goes, the thin one is drawn upright."),
  LARCH("larch", "Larch", "A heavy first branch to draw down with a line or a coil.");

  private final String file;
  private final String words;
  private final String about;

  Example(String file, String words, String about) {
    this.file = file;
    this.words = words;
    this.about = about;
  }

  String words() {
    return words;
  }

  String about() {
    return about;
  }

  /**
   * Reads the tree as any other tree file; no disk is needed for it.
   *
   * @throws InputException if it has a fault
   */
  TreeFile read() throws InputException {
    String name = file + ".tree.json";
    try (InputStream in = Example.class.getResourceAsStream("examples/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the example " + name + " is not in the program");
      }
      return TreeFiles.read(name, in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
