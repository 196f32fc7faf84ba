// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import java.nio.file.Path;
import java.util.List;

/** Reads, checks and saves tree files, version 1. */
public final class TreeFiles {
  private TreeFiles() {}

  /**
   * Reads a tree file.
   *
   * @param path the file
   * @return the document and what to look at in it
   * @throws InputException with every fault and warning, in the order of the file, if the file
   *     cannot be read, is not UTF-8, not JSON, larger than the limits, of a newer version, or has
   *     any fault; a fault that keeps the text from being understood stands alone
   */
  public static TreeFile read(Path path) throws InputException {
    return read(path.toString(), FileText.bytes(path));
  }

  static TreeFile read(String source, byte[] bytes) throws InputException {
    DocumentReader.Outcome outcome = DocumentReader.read(source, bytes);
    if (outcome.document().isEmpty()) {
      throw new InputException(outcome.problems());
    }
    return new TreeFile(outcome.document().get(), outcome.problems());
  }

  /**
   * Everything wrong with a file, in the order of the file; never throws for what is in the file.
   *
   * @param path the file
   * @return faults and warnings; no fault among them means that {@link #read} gives a document
   */
  public static List<Problem> check(Path path) {
    try {
      return read(path).warnings();
    } catch (InputException e) {
      return e.problems();
    }
  }

  /**
   * Saves a document so that either the old or the new file is there, whole, whatever happens.
   *
   * <p>The text is read back and judged before the disk is touched. It is written beside the file,
   * forced to disk and compared; the old file is kept as its name with {@code ~} added; then the
   * new one takes its place in one step. A file reached through a link is replaced at its real
   * place.
   *
   * @param document what to save
   * @param path the file, new or to be replaced
   * @throws InputException if the document could not be read again (a name that no file can hold),
   *     if the file on disk is a tree of a newer version, or if the disk refuses; the old file is
   *     then as it was
   */
  public static void write(Document document, Path path) throws InputException {
    new SafeSave(SafeSave.Mover.ATOMIC).save(document, path);
  }
}
