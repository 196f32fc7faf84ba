// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in plain words why a text is not JSON. */
final class SyntaxFault {
  static final List<String> MORE_AFTER_END =
      List.of(
          "text goes on after the end of the tree",
          "Keep one document in the file; the rest may be left over from an older, longer file");

  /** How the parser words a limit: what, how much, how much is allowed. */
  private static final Pattern EXCEEDS =
      Pattern.compile("([\\w ]+) \\((\\d+)\\) exceeds the maximum allowed \\((\\d+)");

  private SyntaxFault() {}

  static Problem at(String source, JsonLocation at, String kind, List<String> foundAndRemedy) {
    return Problem.fault(
        new Place(source, Math.max(at.getLineNr(), 0), Math.max(at.getColumnNr(), 0), ""),
        kind,
        foundAndRemedy.get(0),
        foundAndRemedy.get(1));
  }

  static Problem empty(String source) {
    return Problem.fault(
        new Place(source, 1, 1, ""),
        "empty-file",
        "the file is empty",
        "Give a tree file; if it should hold a tree, look for its backup, the name with ~ added");
  }

  /** The problem of a text that the parser gave up on. */
  static Problem of(String source, String text, JsonProcessingException e, boolean afterEnd) {
    JsonLocation at = e.getLocation();
    if (at == null) {
      at = JsonLocation.NA;
    }
    if (e instanceof JsonEOFException || endsAt(text, at.getCharOffset())) {
      return at(source, at, "cut-short", cutShort());
    }
    if (afterEnd) {
      return at(source, at, "text-after-end", MORE_AFTER_END);
    }
    return at(source, at, "no-json", explain(text, (int) Math.max(at.getCharOffset(), 0), e));
  }

  /** The problem of a text that goes beyond a limit, where the parser stopped. */
  static Problem limit(String source, JsonLocation at, StreamConstraintsException e) {
    Matcher exceeds = EXCEEDS.matcher(e.getOriginalMessage());
    String found =
        exceeds.lookingAt()
            ? String.format(
                Locale.ROOT,
                "here is too much: %s %s, at most %s is read",
                exceeds.group(1).toLowerCase(Locale.ROOT),
                exceeds.group(2),
                exceeds.group(3))
            : "the file holds too much";
    return at(source, at, "too-much", List.of(found, Limits.words()));
  }

  /** True if nothing stands after a character that does not close anything. */
  private static boolean endsAt(String text, long offset) {
    return offset > 0
        && offset < text.length()
        && "0123456789.-+eE".indexOf(text.charAt((int) offset)) >= 0
        && text.substring((int) offset + 1).isBlank();
  }

  private static List<String> cutShort() {
    return List.of(
        "the file ends in the middle, it was cut short",
        "Copy it again from where it came, or take its backup, the name with ~ added");
  }

  private static List<String> explain(String text, int offset, JsonProcessingException e) {
    String line = lineAt(text, offset);
    String start = text.stripLeading();
    char c = offset < text.length() ? text.charAt(offset) : ' ';
    String message = e.getOriginalMessage().toLowerCase(Locale.ROOT);
    if (start.startsWith("<<<<<<<") || line.matches("(<{7}|={7}|>{7}).*")) {
      return List.of(
          "here are the marks of an unfinished merge",
          "Keep one of the two versions and drop the marks");
    }
    if (start.startsWith("<")) {
      return List.of(
          "this is a web page or XML, not a tree file", "Fetch the tree file itself once more");
    }
    if (message.contains("comment") && (c == '/' || c == '#')) {
      return List.of("JSON has no comments, here is " + c, "Take the comment out");
    }
    if (message.contains("nan") || message.contains("infinity") || message.contains("inf'")) {
      return List.of("NaN or Infinity is no number here", "Measure again and give the number");
    }
    if (message.contains("leading zero")) {
      return List.of("a number starts with a needless 0", "Take the leading zero away");
    }
    if (message.contains("illegal unquoted character")) {
      return List.of(
          "a text holds a line break or control character", "Write it as \\n, \\t or \\u00XX");
    }
    if (message.contains("escape")) {
      return List.of(
          "a backslash in a text is followed by the wrong character",
          "Write \\\\ for a backslash, \\\" for a quotation mark");
    }
    if (!start.startsWith("{") && !start.startsWith("[") && text.startsWith(start, offset)) {
      return List.of(
          "this is no tree file: it starts with " + Value.Text.quoted(start.substring(0, 1)),
          "Give a tree file; it starts with {");
    }
    return character(text, offset, c);
  }

  private static List<String> character(String text, int offset, char c) {
    String shown =
        Value.Text.quoted(String.valueOf(c)) + String.format(Locale.ROOT, " (U+%04X)", (int) c);
    if ("'‘’“”".indexOf(c) >= 0) {
      return List.of("the quotation mark is " + shown, "Use the straight double quotation mark");
    }
    if ((c == '}' || c == ']') && text.substring(0, offset).stripTrailing().endsWith(",")) {
      return List.of("a comma stands before " + shown, "Take the comma away");
    }
    return List.of(
        "this is not JSON: " + shown + " is not expected here",
        "Look here and just before for a missing comma, bracket or quotation mark; a number is"
            + " written like 12.5");
  }

  private static String lineAt(String text, int offset) {
    int from = text.lastIndexOf('\n', Math.max(0, Math.min(offset, text.length()) - 1)) + 1;
    int to = text.indexOf('\n', from);
    return text.substring(from, to < 0 ? text.length() : to);
  }
}
