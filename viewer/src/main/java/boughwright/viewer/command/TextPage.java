// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.VisibleText;
import java.util.regex.Pattern;

/** Builds an answer for a terminal of {@value #WIDTH} columns; nothing hidden gets through. */
final class TextPage {
  static final int WIDTH = 80;

  private static final int INDENT = 2;

  /** Stands for a space that must not break; no visible text holds it. */
  private static final char GLUE = '\u0000';

  private static final Pattern UNIT =
      Pattern.compile("([0-9]) (mm|%|Nm?|[GM]Pa|kg|kg/m3|pixels)(?![A-Za-z0-9])");

  private final StringBuilder text = new StringBuilder();

  /** Words over the whole width. */
  TextPage words(String words) {
    return wrapped(words, 0, 0);
  }

  /** Words a little to the right. */
  TextPage inner(String words) {
    return wrapped(words, INDENT, INDENT);
  }

  /** Words further to the right, that belong to the inner ones before them. */
  TextPage further(String words) {
    return wrapped(words, 2 * INDENT, 2 * INDENT);
  }

  /** Words with a dash before them. */
  TextPage point(String words) {
    return wrapped("- " + words, INDENT, INDENT + 2);
  }

  TextPage blank() {
    text.append('\n');
    return this;
  }

  /** An empty line, then a heading. */
  TextPage heading(String words) {
    return blank().words(words);
  }

  /** An empty line, then a heading with a line under it. */
  TextPage title(String words) {
    blank();
    int from = text.length();
    words(words);
    int longest = text.substring(from).lines().mapToInt(String::length).max().orElse(0);
    text.append("=".repeat(Math.min(WIDTH - 1, longest))).append('\n');
    return this;
  }

  TextPage table(TextTable table) {
    table.lines().forEach(line -> text.append(" ".repeat(INDENT)).append(line).append('\n'));
    return this;
  }

  private TextPage wrapped(String words, int first, int rest) {
    StringBuilder line = new StringBuilder(" ".repeat(first));
    boolean empty = true;
    for (String word : glued(VisibleText.of(words.strip())).split(" +")) {
      if (!empty && length(line) + 1 + length(word) >= WIDTH) {
        text.append(line).append('\n');
        line = new StringBuilder(" ".repeat(rest));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word.replace(GLUE, ' '));
      empty = false;
    }
    text.append(line).append('\n');
    return this;
  }

  /** Keeps a number and its unit on one line. */
  private static String glued(String words) {
    return UNIT.matcher(words).replaceAll("$1" + GLUE + "$2");
  }

  private static int length(CharSequence words) {
    return Character.codePointCount(words, 0, words.length());
  }

  /** The page; every line ends with a line break. */
  @Override
  public String toString() {
    return text.toString();
  }
}
