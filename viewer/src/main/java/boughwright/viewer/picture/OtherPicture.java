// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.nio.charset.StandardCharsets;

/** Says what a file is that is neither a JPEG nor a PNG photo, as far as its first bytes tell. */
final class OtherPicture {
  private static final int LOOKED_AT = 256;

  private OtherPicture() {}

  static String words(byte[] bytes) {
    if (bytes.length == 0) {
      return "the file is empty";
    }
    String start =
        new String(bytes, 0, Math.min(bytes.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
    if (start.startsWith("GIF8")) {
      return "it is a GIF picture";
    }
    if (start.startsWith("BM")) {
      return "it is a BMP picture";
    }
    if (start.startsWith("II*\0") || start.startsWith("MM\0*")) {
      return "it is a TIFF or raw picture";
    }
    if (start.startsWith("RIFF") && start.startsWith("WEBP", 8)) {
      return "it is a WebP picture";
    }
    if (start.startsWith("ftyp", 4)) {
      return start.startsWith("hei", 8) || start.startsWith("mif1", 8)
          ? "it is a HEIC picture"
          : start.startsWith("avif", 8) ? "it is an AVIF picture" : "it is a film";
    }
    boolean text =
        start.chars().allMatch(c -> c >= ' ' && c < 0x7F || c == '\n' || c == '\r' || c == '\t');
    return text ? "it is text and no photo" : "it is no photo";
  }
}
