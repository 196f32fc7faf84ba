// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/** Gets the text of a file, which is UTF-8 or is refused with what it looks like. */
final class FileText {
  private FileText() {}

  /** All bytes of a file that is not too large. */
  static byte[] bytes(Path path) throws InputException {
    String source = path.toString();
    try {
      if (Files.isDirectory(path)) {
        throw refuse(source, "is-folder", "this is a folder, not a file", "Name a tree file in it");
      }
      if (!Files.exists(path)) {
        throw new NoSuchFileException(source);
      }
      if (!Files.isRegularFile(path)) {
        throw refuse(source, "no-plain-file", "this is no plain file", "Name a tree file");
      }
      long size = Files.size(path);
      if (size > Limits.BYTES) {
        throw refuse(
            source,
            "file-too-large",
            String.format(
                Locale.ROOT, "the file has %,d bytes, at most %,d are read", size, Limits.BYTES),
            Limits.words() + "; divide the tree or leave out what was not measured");
      }
      return Files.readAllBytes(path);
    } catch (NoSuchFileException e) {
      throw refuse(source, "no-file", "there is no such file", "Check the name and the folder");
    } catch (AccessDeniedException e) {
      throw refuse(source, "no-access", "reading is not allowed", "Check who may read the file");
    } catch (IOException e) {
      throw refuse(
          source, "cannot-read", "the file cannot be read: " + e.getMessage(), "Check the disk");
    }
  }

  /**
   * The text of a tree file without a byte-order mark.
   *
   * @throws InputException if the bytes are not UTF-8
   */
  static String decode(String source, byte[] bytes) throws InputException {
    String looks = Disguise.of(bytes);
    if (!looks.isEmpty()) {
      throw refuse(
          source,
          "not-utf-8",
          "this is not UTF-8 text, it looks like " + looks,
          "Give a tree file, or save it as UTF-8 in the program it comes from");
    }
    int skip = hasMark(bytes) ? 3 : 0;
    ByteBuffer in = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
    CharBuffer out = CharBuffer.allocate(bytes.length - skip);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    if (result.isError()) {
      throw new InputException(wrongByte(source, bytes, in.position(), out));
    }
    return out.toString();
  }

  /** True if a file starts with the byte-order mark of UTF-8. */
  static boolean hasMark(byte[] bytes) {
    return bytes.length >= 3
        && bytes[0] == (byte) 0xEF
        && bytes[1] == (byte) 0xBB
        && bytes[2] == (byte) 0xBF;
  }

  private static Problem wrongByte(String source, byte[] bytes, int at, CharBuffer before) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < before.length(); i++) {
      boolean end = before.charAt(i) == '\n';
      line += end ? 1 : 0;
      column = end ? 1 : column + 1;
    }
    return Problem.fault(
        new Place(source, line, column, ""),
        "not-utf-8",
        String.format(
            Locale.ROOT,
            "this is not UTF-8 text: byte %d is 0x%02X, as Windows-1252 or Latin-1 have it",
            at,
            bytes[at] & 0xFF),
        "Save the file as UTF-8 in the program it comes from");
  }

  private static InputException refuse(String source, String kind, String found, String remedy) {
    return new InputException(Problem.fault(Place.of(source), kind, found, remedy));
  }
}
