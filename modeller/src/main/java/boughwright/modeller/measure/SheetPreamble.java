// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands above the headings of a sheet: comment lines, and a line that names the separator.
 *
 * @param separator what {@code sep=} says, if it stands there
 * @param comments comment lines, without their mark
 * @param lines how many lines stand above the headings
 * @param table the text from the headings on
 */
record SheetPreamble(Optional<String> separator, List<Comment> comments, int lines, String table) {

  /**
   * A comment line.
   *
   * @param line line in the file
   * @param text its words
   */
  record Comment(int line, String text) {}

  private static final Pattern LINE = Pattern.compile("([^\r\n]*)(\r\n|\r|\n|$)");
  private static final Pattern SEPARATOR = Pattern.compile("\"?sep=([^\"]?)\"?[,;\t]*");
  private static final String PADDING = " ,;\t";

  static SheetPreamble of(String text) {
    Optional<String> separator = Optional.empty();
    List<Comment> comments = new ArrayList<>();
    int lines = 0;
    Matcher line = LINE.matcher(text);
    int start = 0;
    while (start < text.length() && line.find(start)) {
      String words = line.group(1);
      Matcher named = SEPARATOR.matcher(words);
      if (lines == 0 && named.matches()) {
        separator = Optional.of(named.group(1));
      } else {
        Optional<String> comment = comment(words);
        if (comment.isPresent()) {
          comments.add(new Comment(lines + 1, comment.get()));
        } else if (!unpadded(words).isEmpty()) {
          break;
        }
      }
      lines++;
      start = line.end();
    }
    return new SheetPreamble(separator, comments, lines, text.substring(start));
  }

  /** The words of a comment line, which a spreadsheet may have padded and put in quotes. */
  private static Optional<String> comment(String line) {
    String text = unpadded(line).strip();
    if (text.length() > 2 && text.startsWith("\"") && text.endsWith("\"")) {
      text = text.substring(1, text.length() - 1).replace("\"\"", "\"").strip();
    }
    return text.startsWith("#") ? Optional.of(text.substring(1).strip()) : Optional.empty();
  }

  private static String unpadded(String line) {
    int end = line.length();
    while (end > 0 && PADDING.indexOf(line.charAt(end - 1)) >= 0) {
      end--;
    }
    return line.substring(0, end);
  }
}
