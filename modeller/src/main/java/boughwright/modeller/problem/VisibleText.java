// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.problem;

import java.util.Locale;

/** Makes text from outside safe to print on one line of a terminal. */
public final class VisibleText {
  private VisibleText() {}

  /**
   * The text with control characters, line breaks, lone surrogates and characters that reorder text
   * replaced by their code in the form {@code <U+202E>}.
   */
  public static String of(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              if (isHidden(point)) {
                out.append(String.format(Locale.ROOT, "<U+%04X>", point));
              } else {
                out.appendCodePoint(point);
              }
            });
    return out.toString();
  }

  /** True for a character that cannot be seen, or that changes how its neighbours are shown. */
  public static boolean isHidden(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED ->
          true;
      case Character.FORMAT -> codePoint != 0x200D && codePoint != 0x200C;
      default -> false;
    };
  }
}
