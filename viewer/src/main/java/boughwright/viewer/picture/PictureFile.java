// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import javax.imageio.ImageIO;

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
      try (FileChannel channel =
              FileChannel.open(
                  beside, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING);
          OutputStream out = Channels.newOutputStream(channel)) {
        if (!ImageIO.write(image, "png", out)) {
          throw new IOException("no writer for PNG");
        }
        channel.force(true);
      }
      PlainRights.give(beside);
      move(beside, target);
    } catch (IOException e) {
      discard(beside);
      throw fault(file, "cannot be written: " + reason(e), "Give a file in a folder you may write");
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
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }

  private static InputException fault(Path file, String found, String remedy) {
    return new InputException(
        Problem.fault(Place.of(file.toString()), "picture-file", found, remedy));
  }
}
