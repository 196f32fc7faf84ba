// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/** Places to write to, looked at before anything is computed. */
final class OutputFile {
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  private OutputFile() {}

  /**
   * A place for a picture: new, or a picture that is drawn again.
   *
   * @param name what the person gave
   * @param input the file that is read
   * @throws InputException if no picture can or should be written there
   */
  static Path forPicture(String name, Path input) throws InputException {
    Path file = place(name, input);
    if (!name.toLowerCase(Locale.ROOT).endsWith(".png")) {
      throw refused(name, "no-png-name", "pictures are written as PNG", "End the name with .png");
    }
    if (Files.exists(file) && !isPictureOrEmpty(file)) {
      throw refused(
          name,
          "file-is-there",
          "a file of this name is there already and is no picture",
          "Give another name");
    }
    return file;
  }

  /**
   * A place for a tree file.
   *
   * @param name what the person gave
   * @param input the file that is read
   * @param replace whether a tree file that is there may be replaced
   * @throws InputException if it cannot be written there, or is there already
   */
  static Path forTree(String name, Path input, boolean replace) throws InputException {
    Path file = place(name, input);
    if (!name.toLowerCase(Locale.ROOT).endsWith(".tree.json")) {
      throw refused(
          name, "no-tree-name", "tree files are called NAME.tree.json", "End it with .tree.json");
    }
    if (Files.exists(file) && !replace) {
      throw refused(
          name,
          "file-is-there",
          "a file of this name is there already",
          "Give another name with -o, or add --replace: the old one is kept as " + name + "~");
    }
    return file;
  }

  private static Path place(String name, Path input) throws InputException {
    Path file = InputFiles.path(name);
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || Files.isDirectory(file)) {
      throw refused(name, "is-folder", "this is a folder", "Give the name of a file in it");
    }
    if (!Files.isDirectory(folder)) {
      throw refused(name, "no-folder", "its folder is not there", "Make the folder first");
    }
    if (!Files.isWritable(folder)) {
      throw refused(name, "no-access", "writing is not allowed there", "Choose another folder");
    }
    if (isSame(file, input)) {
      throw refused(
          name, "is-input", "this is the file that is read", "Give another name to write to");
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file)) {
      throw refused(name, "no-plain-file", "this is no plain file", "Give another name");
    }
    return file;
  }

  private static boolean isSame(Path file, Path input) {
    try {
      return Files.exists(file) && Files.exists(input) && Files.isSameFile(file, input);
    } catch (IOException e) {
      return file.toAbsolutePath().normalize().equals(input.toAbsolutePath().normalize());
    }
  }

  private static boolean isPictureOrEmpty(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] head = in.readNBytes(PNG.length);
      return head.length == 0 || Arrays.equals(head, PNG);
    } catch (IOException e) {
      return false;
    }
  }

  private static InputException refused(String where, String kind, String found, String remedy) {
    return new InputException(Problem.fault(Place.of(where), kind, found, remedy));
  }
}
