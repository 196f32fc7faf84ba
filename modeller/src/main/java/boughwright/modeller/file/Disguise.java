// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/** Recognises files that are something else, by their first bytes. */
final class Disguise {
  private static final Map<String, String> BEGINNINGS = beginnings();

  private Disguise() {}

  private static Map<String, String> beginnings() {
    Map<String, String> known = new LinkedHashMap<>();
    known.put("0000feff", "UTF-32 (big endian)");
    known.put("fffe0000", "UTF-32 (little endian)");
    known.put("feff", "UTF-16 (big endian)");
    known.put("fffe", "UTF-16 (little endian)");
    known.put("ffd8ff", "a JPEG picture");
    known.put("89504e47", "a PNG picture");
    known.put("47494638", "a GIF picture");
    known.put("504b0304", "a ZIP archive");
    known.put("1f8b", "a gzip archive");
    known.put("25504446", "a PDF");
    return known;
  }

  /** What bytes look like if they are no UTF-8 text; empty if they may be. */
  static String of(byte[] bytes) {
    String head = HexFormat.of().formatHex(bytes, 0, Math.min(bytes.length, 4));
    for (Map.Entry<String, String> known : BEGINNINGS.entrySet()) {
      if (head.startsWith(known.getKey())) {
        return known.getValue();
      }
    }
    return wide(bytes);
  }

  private static String wide(byte[] bytes) {
    if (bytes.length < 2 || bytes.length % 2 != 0) {
      return "";
    }
    int pairs = Math.min(bytes.length / 2, 32);
    int zeroFirst = 0;
    int zeroSecond = 0;
    for (int i = 0; i < pairs; i++) {
      zeroFirst += bytes[2 * i] == 0 ? 1 : 0;
      zeroSecond += bytes[2 * i + 1] == 0 ? 1 : 0;
    }
    if (zeroFirst == pairs && zeroSecond < pairs) {
      return "UTF-16 (big endian) without a byte-order mark";
    }
    if (zeroSecond == pairs && zeroFirst < pairs) {
      return "UTF-16 (little endian) without a byte-order mark";
    }
    return "";
  }
}
