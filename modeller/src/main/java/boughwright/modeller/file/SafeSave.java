// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.UUID;

/**
 * Saves a document so that a failure at any step leaves the old file as it was.
 *
 * <p>Before the move: the temporary file is deleted, the old file is untouched. The move: one step
 * of the file system, either done or not. After it: the new file is whole; only the folder's own
 * record may not have reached the disk, which file systems that refuse to be asked do by
 * themselves.
 */
final class SafeSave {
  /** Added to the name of the file that was replaced. */
  static final String BACKUP = "~";

  private final Mover mover;

  /** Puts a finished file in the place of another in one step. */
  @FunctionalInterface
  interface Mover {
    Mover ATOMIC =
        (from, to) ->
            Files.move(
                from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);

    void move(Path from, Path to) throws IOException;
  }

  SafeSave(Mover mover) {
    this.mover = mover;
  }

  void save(Document document, Path path) throws InputException {
    byte[] bytes = TreeJson.bytes(document);
    requireReadable(bytes, path);
    Path target = realPath(path);
    requireNotNewer(target);
    try {
      replace(target, bytes);
    } catch (IOException | SecurityException e) {
      throw refuse(
          path,
          "cannot-save",
          "the tree is not saved, the old file is as it was: " + reason(e),
          "Save it under another name or in another folder");
    }
  }

  /** What would not come back the same is never written. */
  private static void requireReadable(byte[] bytes, Path path) throws InputException {
    Document again = TreeFiles.read(path.toString(), bytes).document();
    if (!Arrays.equals(TreeJson.bytes(again), bytes)) {
      throw refuse(
          path,
          "not-the-same",
          "the tree is not saved, for it would read back as another one",
          "Save it under another name and report this as a defect");
    }
  }

  /** The file behind a link, so that saving replaces the file and not the link. */
  static Path realPath(Path path) throws InputException {
    try {
      return Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
    } catch (IOException e) {
      throw refuse(path, "cannot-save", "the file cannot be found: " + reason(e), "Check the path");
    }
  }

  private static void requireNotNewer(Path target) throws InputException {
    if (!Files.exists(target)) {
      return;
    }
    byte[] old = FileText.bytes(target);
    boolean newer;
    try {
      newer = Header.isNewer(JsonText.parse("", FileText.decode("", old)));
    } catch (InputException e) {
      newer = false;
    }
    if (newer) {
      throw refuse(
          target,
          "newer-version",
          "the file on disk is a tree of a newer version, it is left as it is",
          "Save under another name, or use a newer Boughwright");
    }
  }

  private void replace(Path target, byte[] bytes) throws IOException {
    Path beside = beside(target);
    try {
      writeForced(beside, bytes);
      if (Files.exists(target)) {
        if (!Files.isWritable(target)) {
          throw new IOException("the file is write-protected");
        }
        keepPermissions(target, beside);
        backup(target);
      }
      mover.move(beside, target);
    } finally {
      Files.deleteIfExists(beside);
    }
    forceFolder(target.getParent());
  }

  /** A short name that no file has, so that it fits where the file's own name fits. */
  private static Path beside(Path target) {
    return target.resolveSibling("." + UUID.randomUUID().toString().substring(0, 13) + ".tmp");
  }

  private void backup(Path target) throws IOException {
    Path copy = beside(target);
    try {
      writeForced(copy, Files.readAllBytes(target));
      keepPermissions(target, copy);
      mover.move(copy, target.resolveSibling(target.getFileName() + BACKUP));
    } finally {
      Files.deleteIfExists(copy);
    }
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    PosixFileAttributeView own = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (old != null && own != null) {
      own.setPermissions(old.readAttributes().permissions());
    }
  }

  /** Writes a new file and makes sure that the disk has it. */
  static void writeForced(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel = open(file)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
    if (!Arrays.equals(Files.readAllBytes(file), bytes)) {
      throw new IOException("the disk gave back other bytes than were written");
    }
  }

  private static FileChannel open(Path file) throws IOException {
    return FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
  }

  /** Asks for the folder's record to be forced to disk; Windows refuses, and does it unasked. */
  static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      return;
    }
  }

  static String reason(Exception e) {
    if (e instanceof NoSuchFileException) {
      return "there is no such folder";
    }
    if (e instanceof AccessDeniedException) {
      return "writing is not allowed here";
    }
    if (e instanceof AtomicMoveNotSupportedException) {
      return "this disk cannot replace a file in one step";
    }
    if (e instanceof FileSystemException failure && failure.getReason() != null) {
      return failure.getReason();
    }
    return String.valueOf(e.getMessage());
  }

  private static InputException refuse(Path path, String kind, String found, String remedy) {
    return new InputException(Problem.fault(Place.of(path.toString()), kind, found, remedy));
  }
}
