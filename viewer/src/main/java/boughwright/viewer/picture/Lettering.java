// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.AttributedString;
import java.text.Bidi;
import java.util.Map;
import java.util.TreeSet;

/**
 * Sets words in the bundled typeface Inter (SIL Open Font License), and in the system's own sans
 * serif where Inter lacks a letter; scripts written from right to left come out in their order.
 */
final class Lettering {
  /** Weight of the letters. */
  enum Weight {
    REGULAR("Inter-Regular.otf"),
    STRONG("Inter-SemiBold.otf");

    private final Font font;

    Weight(String file) {
      this.font = load(file);
    }

    private static Font load(String file) {
      String path = "/com/formdev/flatlaf/fonts/inter/" + file;
      try (InputStream in = Lettering.class.getResourceAsStream(path)) {
        if (in == null) {
          throw new IllegalStateException("no resource " + path);
        }
        return Font.createFont(Font.TRUETYPE_FONT, in);
      } catch (FontFormatException e) {
        throw new IllegalStateException(path, e);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
  private static final String ELLIPSIS = "…";

  private Lettering() {}

  /** One line of words, ready to draw; an empty line is drawn as a space. */
  static TextLayout line(String words, Weight weight, double size) {
    return line(words, weight, size, isRightToLeft(words));
  }

  /** Whether words are read from right to left: their first letter decides. */
  static boolean isRightToLeft(String words) {
    return !new Bidi(words, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
  }

  /** One line of words that belong to a paragraph of a given direction. */
  static TextLayout line(String words, Weight weight, double size, boolean rightToLeft) {
    String text = words.isEmpty() ? " " : words;
    AttributedString styled = new AttributedString(text);
    Font own = weight.font.deriveFont((float) size);
    Font system = new Font(Font.SANS_SERIF, style(weight), 1).deriveFont((float) size);
    for (int from = 0; from < text.length(); ) {
      boolean known = own.canDisplay(text.codePointAt(from));
      int to = from;
      while (to < text.length() && own.canDisplay(text.codePointAt(to)) == known) {
        to += Character.charCount(text.codePointAt(to));
      }
      styled.addAttributes(Map.of(TextAttribute.FONT, known ? own : system), from, to);
      from = to;
    }
    styled.addAttribute(
        TextAttribute.RUN_DIRECTION,
        rightToLeft ? TextAttribute.RUN_DIRECTION_RTL : TextAttribute.RUN_DIRECTION_LTR);
    return new TextLayout(styled.getIterator(), CONTEXT);
  }

  private static int style(Weight weight) {
    return weight == Weight.STRONG ? Font.BOLD : Font.PLAIN;
  }

  static double width(String words, Weight weight, double size) {
    return words.isEmpty() ? 0 : line(words, weight, size).getAdvance();
  }

  /** The words, or as many of them as fit into a width, with an ellipsis. */
  static String fitted(String words, Weight weight, double size, double width) {
    if (width(words, weight, size) <= width) {
      return words;
    }
    int low = 0;
    int high = words.length();
    while (low + 1 < high) {
      int middle = (low + high) >>> 1;
      if (width(shortened(words, middle), weight, size) <= width) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return shortened(words, low);
  }

  private static String shortened(String words, int length) {
    int end =
        length > 0 && Character.isHighSurrogate(words.charAt(length - 1)) ? length - 1 : length;
    return words.substring(0, end).strip() + ELLIPSIS;
  }

  /** Letters that neither typeface has, in order, without repeats. */
  static String undrawable(String words) {
    Font own = Weight.REGULAR.font;
    Font system = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    TreeSet<Integer> missing = new TreeSet<>();
    words
        .codePoints()
        .filter(point -> !own.canDisplay(point) && !system.canDisplay(point))
        .forEach(missing::add);
    StringBuilder text = new StringBuilder();
    missing.forEach(text::appendCodePoint);
    return text.toString();
  }
}
