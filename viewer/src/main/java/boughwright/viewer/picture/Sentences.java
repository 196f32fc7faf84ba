// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.util.ArrayList;
import java.util.List;

/** Shortens words by whole sentences, so that none is broken off. */
final class Sentences {
  private Sentences() {}

  /** As many of the first sentences as find room; the first one in any case. */
  static String fitting(String words, Lettering.Weight weight, double size, Paragraph.Room room) {
    String found = "";
    for (String sentence : split(words)) {
      String longer = found.isEmpty() ? sentence : found + " " + sentence;
      if (!found.isEmpty() && !fits(longer, weight, size, room)) {
        return found;
      }
      found = longer;
    }
    return found;
  }

  private static boolean fits(
      String words, Lettering.Weight weight, double size, Paragraph.Room room) {
    Paragraph.Room more = new Paragraph.Room(room.width(), room.lines() + 1);
    return Paragraph.lines(words, weight, size, more).size() <= room.lines();
  }

  /** A sentence ends with a full stop, a space and a capital letter outside brackets. */
  private static List<String> split(String words) {
    List<String> sentences = new ArrayList<>();
    int from = 0;
    int depth = 0;
    for (int n = 0; n + 2 < words.length(); n++) {
      depth += words.charAt(n) == '(' ? 1 : words.charAt(n) == ')' ? -1 : 0;
      boolean ends =
          words.charAt(n) == '.'
              && words.charAt(n + 1) == ' '
              && Character.isUpperCase(words.charAt(n + 2));
      if (ends && depth == 0) {
        sentences.add(words.substring(from, n + 1).strip());
        from = n + 1;
      }
    }
    sentences.add(words.substring(from).strip());
    return sentences;
  }
}
