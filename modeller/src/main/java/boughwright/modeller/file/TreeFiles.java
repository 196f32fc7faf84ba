// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Backdrop;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

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

  /**
   * Reads a tree file that is in memory.
   *
   * @param source what it is called, for messages
   * @param bytes all of it
   * @throws InputException as {@link #read(Path)}
   */
  public static TreeFile read(String source, byte[] bytes) throws InputException {
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

  /**
   * Saves a document with photos that are not beside its file yet: first the photos, then the tree.
   *
   * <p>A photo never takes the place of another file: where its name is taken by another content,
   * it gets another name. Photos no backdrop names are left out.
   *
   * @param document what to save
   * @param path the file, new or to be replaced
   * @param photos content of new photos by the name the backdrops use
   * @return the document as it was saved, with the names the photos have now
   * @throws InputException as {@link #write(Document, Path)}; the photos are then gone again
   */
  public static Document write(Document document, Path path, Map<String, byte[]> photos)
      throws InputException {
    return new PhotoSave(path).save(document, photos);
  }

  /**
   * Where a photo of a tree file lies.
   *
   * @param path the tree file
   * @throws InputException if a link leads out of the folder of the tree file
   */
  public static Path photo(Path path, Backdrop backdrop) throws InputException {
    return new PhotoSave(path).place(backdrop.photo());
  }
}
