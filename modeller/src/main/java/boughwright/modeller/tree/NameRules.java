// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Locale;
import java.util.Optional;

/** Which texts can be names: those that can be shown, printed and written to other formats. */
public final class NameRules {
  /** Characters of an id. */
  public static final int LONGEST_ID = 100;

  /** Characters of the name of a tree. */
  public static final int LONGEST_NAME = 1_000;

  private static final int NOT_A_CHARACTER = 0xFFFE;

  private NameRules() {}

  /** What is wrong with the name of a tree, as words after "name"; empty if nothing is. */
  public static Optional<String> faultOfName(String name) {
    return fault(name, LONGEST_NAME);
  }

  /** What is wrong with an id, as words after the field's name; empty if nothing is. */
  public static Optional<String> faultOfId(String id) {
    if (id.endsWith("*")) {
      return Optional.of("ends in *, which stands for every id that starts so");
    }
    return fault(id, LONGEST_ID);
  }

  private static Optional<String> fault(String text, int longest) {
    if (!text.isEmpty() && text.length() <= longest && isPlain(text)) {
      return Optional.empty();
    }
    if (text.codePoints().allMatch(NameRules::isBlank)) {
      return Optional.of("is blank");
    }
    int length = text.codePointCount(0, text.length());
    if (length > longest) {
      return Optional.of("has " + length + " characters, at most " + longest + " are kept");
    }
    return text.codePoints()
        .filter(NameRules::isImpossible)
        .mapToObj(
            point ->
                String.format(
                    Locale.ROOT,
                    "holds the character U+%04X, which no page or picture can show",
                    point))
        .findFirst();
  }

  /** True if a text is letters, digits and signs of ASCII. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) <= ' ' || text.charAt(i) > '~') {
        return false;
      }
    }
    return true;
  }

  private static boolean isBlank(int point) {
    return Character.isWhitespace(point) || Character.isSpaceChar(point);
  }

  /** NUL, the last two code points of each plane, and the reserved block U+FDD0 to U+FDEF. */
  private static boolean isImpossible(int point) {
    return point == 0
        || (point & NOT_A_CHARACTER) == NOT_A_CHARACTER
        || (point >= 0xFDD0 && point <= 0xFDEF);
  }
}
