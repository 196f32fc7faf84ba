// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.edit.NewTree;
import boughwright.modeller.file.LeftBehind;
import boughwright.modeller.file.Recovery;
import boughwright.modeller.file.TreeFile;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.history.History;
import boughwright.modeller.measure.MeasuredTree;
import boughwright.modeller.measure.TapeSheet;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A tree on its way into a window.
 *
 * @param history the document and what led to it
 * @param file where it is saved; empty if nowhere yet
 * @param print what that file held; empty if there is none
 * @param warnings what the person should look at
 * @param taken what was left behind, where it was; empty if it comes from elsewhere
 */
record Opened(
    History history,
    Optional<Path> file,
    Optional<Fingerprint> print,
    List<Problem> warnings,
    Optional<LeftBehind.Taken> taken) {
  Opened {
    Objects.requireNonNull(history, "history");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(print, "print");
    warnings = List.copyOf(warnings);
    Objects.requireNonNull(taken, "taken");
  }

  /** What goes on keeping it, where it was left behind. */
  Optional<Recovery> recovery() {
    return taken.map(LeftBehind.Taken::recovery);
  }

  /** Its photos that no folder holds yet, by name. */
  Map<String, byte[]> photos() {
    return taken.map(LeftBehind.Taken::photos).orElse(Map.of());
  }

  private static Opened inNoFile(History history, List<Problem> warnings) {
    return new Opened(history, Optional.empty(), Optional.empty(), warnings, Optional.empty());
  }

  /** What was left behind; its file is as it was saved last. */
  static Opened recovered(LeftBehind.Taken taken) {
    return new Opened(
        History.unsaved(taken.document()),
        taken.file(),
        taken.file().flatMap(Fingerprint::of),
        List.of(),
        Optional.of(taken));
  }

  /**
   * A tree file.
   *
   * @throws InputException with every fault of the file
   */
  static Opened file(Path path) throws InputException {
    Path whole = path.toAbsolutePath().normalize();
    Optional<Fingerprint> print = Fingerprint.of(whole);
    return read(TreeFiles.read(path), whole, print);
  }

  /** A tree file that was read just now. */
  static Opened read(TreeFile tree, Path path, Optional<Fingerprint> print) {
    return new Opened(
        History.opened(tree.document()),
        Optional.of(path),
        print,
        tree.warnings(),
        Optional.empty());
  }

  /**
   * An example, as a copy that no file holds and that nobody has to save.
   *
   * @throws InputException if it cannot be laid out
   */
  static Opened example(Example example) throws InputException {
    return inNoFile(History.opened(example.read().document()), List.of());
  }

  /**
   * A tape sheet.
   *
   * @throws InputException with every fault of the sheet
   */
  static Opened sheet(Path path) throws InputException {
    MeasuredTree tree = TapeSheet.read(path);
    return inNoFile(History.unsaved(tree.document()), tree.warnings());
  }

  /**
   * A tree to sketch.
   *
   * @throws InputException if the name or the species cannot be kept
   */
  static Opened fresh(String name, String species) throws InputException {
    return inNoFile(History.unsaved(NewTree.document(name, species)), List.of());
  }
}
