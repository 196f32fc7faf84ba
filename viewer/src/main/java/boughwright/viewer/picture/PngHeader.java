// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.picture.PhotoHeader.Broken;
import boughwright.viewer.picture.PhotoHeader.Colour;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;

/** Walks the chunks of a PNG file (W3C, Portable Network Graphics, section 5) and checks them. */
final class PngHeader {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  /** Length, name and checksum around the content of a chunk. */
  private static final int FRAME = 12;

  private static final int HEADER_LENGTH = 13;
  private static final int INTERLACED_PASSES = 7;

  private PngHeader() {}

  static boolean is(byte[] bytes) {
    return bytes.length > SIGNATURE.length
        && Arrays.equals(bytes, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
  }

  static PhotoHeader of(byte[] bytes) throws Broken {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    int i = SIGNATURE.length;
    PhotoHeader header = null;
    byte[] exif = new byte[0];
    boolean pixels = false;
    while (i + FRAME <= bytes.length) {
      long length = buffer.getInt(i) & 0xFFFFFFFFL;
      String name = new String(bytes, i + 4, 4, StandardCharsets.ISO_8859_1);
      if (i + FRAME + length > bytes.length) {
        throw new Broken("it breaks off in the middle");
      }
      int end = i + 8 + (int) length;
      requireSum(bytes, i + 4, end, buffer.getInt(end));
      switch (name) {
        case "IHDR" -> header = header(buffer, i + 8, (int) length);
        case "acTL" -> throw new Broken("it is animated", "Choose a photo that stands still");
        case "eXIf" -> exif = Arrays.copyOfRange(bytes, i + 8, end);
        case "IDAT" -> pixels = true;
        case "IEND" -> {
          if (header == null || !pixels) {
            throw new Broken("it has no picture in it");
          }
          return new PhotoHeader(
              header.width(), header.height(), header.passes(), Colour.USUAL, exif);
        }
        default -> {}
      }
      i = end + 4;
    }
    throw new Broken("it breaks off before its end");
  }

  private static void requireSum(byte[] bytes, int from, int to, int sum) throws Broken {
    CRC32 crc = new CRC32();
    crc.update(bytes, from, to - from);
    if ((int) crc.getValue() != sum) {
      throw new Broken("it is damaged: a checksum is wrong");
    }
  }

  private static PhotoHeader header(ByteBuffer buffer, int at, int length) throws Broken {
    if (length != HEADER_LENGTH) {
      throw new Broken("it is damaged near its start");
    }
    int passes = buffer.get(at + 12) == 0 ? 1 : INTERLACED_PASSES;
    return new PhotoHeader(
        buffer.getInt(at), buffer.getInt(at + 4), passes, Colour.USUAL, new byte[0]);
  }
}
