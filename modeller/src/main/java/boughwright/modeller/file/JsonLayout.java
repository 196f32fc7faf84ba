// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.math.BigDecimal;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Writes plain values as JSON a person can read: what fits on a line stands on one line, and each
 * object of a list of objects starts a new one.
 */
final class JsonLayout {
  private static final int LINE = 200;
  private static final String INDENT = "  ";

  private final StringBuilder out = new StringBuilder();

  private JsonLayout() {}

  /**
   * The text of a value, with a line end after it.
   *
   * @param value text, {@code Boolean}, {@code BigDecimal}, {@code Integer}, list, map or null
   */
  static String of(Map<String, Object> value) {
    JsonLayout layout = new JsonLayout();
    layout.brackets("{}", "", value.entrySet().iterator(), entry -> layout.member(entry, ""));
    return layout.out.append('\n').toString();
  }

  private void value(Object value, String indent) {
    if (isScalar(value)) {
      out.append(scalar(value));
      return;
    }
    String line = needsLines(value) ? null : oneLine(value);
    if (line != null && line.length() + indent.length() <= LINE) {
      out.append(line);
    } else if (value instanceof Map<?, ?> map) {
      brackets("{}", indent, map.entrySet().iterator(), entry -> member(entry, indent));
    } else {
      List<?> list = (List<?>) value;
      brackets("[]", indent, list.iterator(), inner -> value(inner, indent + INDENT));
    }
  }

  private void member(Map.Entry<?, ?> entry, String indent) {
    out.append(scalar(entry.getKey())).append(": ");
    value(entry.getValue(), indent + INDENT);
  }

  private <T> void brackets(String pair, String indent, Iterator<T> parts, Consumer<T> part) {
    out.append(pair.charAt(0));
    boolean any = parts.hasNext();
    while (parts.hasNext()) {
      out.append('\n').append(indent).append(INDENT);
      part.accept(parts.next());
      out.append(parts.hasNext() ? "," : "");
    }
    out.append(any ? "\n" + indent : "").append(pair.charAt(1));
  }

  private static boolean isScalar(Object value) {
    return !(value instanceof Map) && !(value instanceof List);
  }

  private static boolean needsLines(Object value) {
    if (value instanceof List<?> list) {
      return list.stream().anyMatch(inner -> inner instanceof Map || needsLines(inner));
    }
    return value instanceof Map<?, ?> map && map.values().stream().anyMatch(JsonLayout::needsLines);
  }

  private static String oneLine(Object value) {
    StringBuilder line = new StringBuilder();
    if (value instanceof Map<?, ?> map) {
      line.append('{');
      map.forEach(
          (name, inner) ->
              line.append(line.length() > 1 ? ", " : "")
                  .append(scalar(name))
                  .append(": ")
                  .append(oneLine(inner)));
      return line.append('}').toString();
    }
    if (value instanceof List<?> list) {
      line.append('[');
      list.forEach(inner -> line.append(line.length() > 1 ? ", " : "").append(oneLine(inner)));
      return line.append(']').toString();
    }
    return scalar(value);
  }

  private static String scalar(Object value) {
    if (value == null || value instanceof Boolean || value instanceof BigDecimal) {
      return String.valueOf(value);
    }
    if (value instanceof Integer || value instanceof Long) {
      return value.toString();
    }
    if (value instanceof String text) {
      return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }
    throw new IllegalArgumentException("no JSON value: " + value.getClass());
  }
}
