// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.util.ArrayList;
import java.util.List;

/** Breaks words into lines of a width, the last one shortened when there are too many. */
final class Paragraph {
  private Paragraph() {}

  static List<String> lines(String words, Lettering.Weight weight, double size, Room room) {
    List<String> lines = new ArrayList<>();
    String rest = words.strip();
    while (!rest.isEmpty()) {
      if (lines.size() == room.lines() - 1 || fits(rest, weight, size, room.width())) {
        lines.add(Lettering.fitted(rest, weight, size, room.width()));
        break;
      }
      int end = lineEnd(rest, weight, size, room.width());
      lines.add(rest.substring(0, end).strip());
      rest = rest.substring(end).strip();
    }
    return lines;
  }

  /**
   * Room for a paragraph.
   *
   * @param width width of a line [pixels]
   * @param lines most lines, 1 or more
   */
  record Room(double width, int lines) {}

  private static boolean fits(String words, Lettering.Weight weight, double size, double width) {
    return Lettering.width(words, weight, size) <= width;
  }

  /** Where the first line ends: after the last word that fits, or inside a word too long for it. */
  private static int lineEnd(String words, Lettering.Weight weight, double size, double width) {
    int end = 0;
    for (int at = words.indexOf(' '); at >= 0; at = words.indexOf(' ', at + 1)) {
      if (!fits(words.substring(0, at), weight, size, width)) {
        break;
      }
      end = at;
    }
    if (end > 0) {
      return end;
    }
    int low = 1;
    int high = words.length();
    while (low + 1 < high) {
      int middle = (low + high) >>> 1;
      if (fits(words.substring(0, middle), weight, size, width)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Character.isHighSurrogate(words.charAt(low - 1)) && low > 1 ? low - 1 : low;
  }
}
