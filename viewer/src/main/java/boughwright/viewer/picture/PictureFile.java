// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes a picture as a PNG file, whole or not at all. */
public final class PictureFile {
  private PictureFile() {}

  /**
   * Writes a picture beside its place and moves it there; a file that is already there is replaced
   * only by a whole picture.
   *
   * @throws InputException if the file cannot be written there; nothing is changed then
   */
  public static void write(BufferedImage image, Path file) throws InputException {
    Path target = file.toAbsolutePath();
    requirePlace(file, target);
    Path beside = null;
    try {
      beside = Files.createTempFile(target.getParent(), ".picture", ".part");
      write(encoded(image), beside);
      PlainRights.give(beside);
      move(beside, target);
    } catch (IOException e) {
      discard(beside);
      throw fault(
          file,
          "cannot be written: " + reason(e),
          "Make room there, or give a file in another folder");
    }
  }

  /** In memory first: writing then fails for one reason only, which the disk itself tells. */
  private static byte[] encoded(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
      if (!ImageIO.write(image, "png", stream)) {
        throw new IOException("no writer for PNG");
      }
    }
    return bytes.toByteArray();
  }

  private static void write(byte[] bytes, Path beside) throws IOException {
    try (FileChannel channel =
        FileChannel.open(beside, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
  }

  private static void requirePlace(Path file, Path target) throws InputException {
    if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
      throw fault(file, "its folder is not there", "Make the folder first, or give another place");
    }
    if (Files.isDirectory(target)) {
      throw fault(file, "is a folder", "Give the name of a file, such as picture.png");
    }
    String name = String.valueOf(target.getFileName());
    if (!name.toLowerCase(Locale.ROOT).endsWith(".png")) {
      throw fault(file, "pictures are written as PNG", "End the name with .png");
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void discard(Path beside) {
    try {
      if (beside != null) {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      beside.toFile().deleteOnExit();
    }
  }

  private static String reason(IOException e) {
    if (e instanceof FileSystemException failure && failure.getReason() != null) {
      return failure.getReason();
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }

  private static InputException fault(Path file, String found, String remedy) {
    return new InputException(
        Problem.fault(Place.of(file.toString()), "picture-file", found, remedy));
  }
}
