// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.problem.InputException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads strict JSON (RFC 8259) into values that know where in the file they stand. */
final class JsonText {
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(Limits.constraints())
          .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
          .disable(JsonFactory.Feature.FAIL_ON_SYMBOL_HASH_OVERFLOW)
          .build();

  private final String source;
  private final String text;
  private final Deque<Open> open = new ArrayDeque<>();
  private Value root;

  private JsonText(String source, String text) {
    this.source = source;
    this.text = text;
  }

  /** A list or object whose end has not been met. */
  private static final class Open {
    final Value value;
    String name = "";

    Open(Value value) {
      this.value = value;
    }
  }

  /**
   * The one value a text consists of.
   *
   * @param source name of the file, for messages
   * @param text all of the file
   * @throws InputException with the first fault, if the text is not one JSON value within {@link
   *     Limits}
   */
  static Value parse(String source, String text) throws InputException {
    return new JsonText(source, text).parse();
  }

  private Value parse() throws InputException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      takeAll(parser);
    } catch (JsonProcessingException e) {
      throw new InputException(SyntaxFault.of(source, text, e, root != null && open.isEmpty()));
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory was read", e);
    }
    if (root == null) {
      throw new InputException(SyntaxFault.empty(source));
    }
    return root;
  }

  private void takeAll(JsonParser parser) throws IOException, InputException {
    try {
      while (parser.nextToken() != null) {
        if (root != null && open.isEmpty()) {
          throw fault("text-after-end", parser.currentTokenLocation(), SyntaxFault.MORE_AFTER_END);
        }
        take(parser);
      }
    } catch (StreamConstraintsException e) {
      throw new InputException(SyntaxFault.limit(source, parser.currentLocation(), e));
    }
  }

  private void take(JsonParser parser) throws IOException, InputException {
    JsonToken token = parser.currentToken();
    JsonLocation at = parser.currentTokenLocation();
    int line = at.getLineNr();
    int column = at.getColumnNr();
    switch (token) {
      case FIELD_NAME -> open.peek().name = whole(parser.currentName(), at);
      case START_OBJECT -> start(new Value.Fields(line, column, new LinkedHashMap<>()), at);
      case START_ARRAY -> start(new Value.Items(line, column, new ArrayList<>()), at);
      case END_OBJECT, END_ARRAY -> open.pop();
      case VALUE_STRING -> add(new Value.Text(line, column, whole(parser.getText(), at)), at);
      case VALUE_TRUE, VALUE_FALSE ->
          add(new Value.Flag(line, column, token == JsonToken.VALUE_TRUE), at);
      case VALUE_NULL -> add(new Value.Nothing(line, column), at);
      default -> add(new Value.Numeral(line, column, parser.getText()), at);
    }
  }

  private void start(Value value, JsonLocation at) throws InputException {
    add(value, at);
    open.push(new Open(value));
  }

  private void add(Value value, JsonLocation at) throws InputException {
    if (open.isEmpty()) {
      root = value;
      return;
    }
    Open holder = open.peek();
    if (holder.value instanceof Value.Items items) {
      items.values().add(value);
    } else if (holder.value instanceof Value.Fields fields) {
      addMember(fields.members(), holder.name, value, at);
    }
  }

  private void addMember(Map<String, Value> members, String name, Value value, JsonLocation at)
      throws InputException {
    Value first = members.putIfAbsent(name, value);
    if (first != null) {
      String found =
          String.format(
              Locale.ROOT,
              "the field %s stands twice in one object, first in line %d",
              Value.Text.quoted(name),
              first.line());
      throw fault("duplicate-field", at, List.of(found, "Keep the right one of the two"));
    }
  }

  /** Half a surrogate pair cannot be written as UTF-8, so keeping it is impossible. */
  private String whole(String part, JsonLocation at) throws InputException {
    for (int i = 0; i < part.length(); i++) {
      char c = part.charAt(i);
      if (!Character.isSurrogate(c)) {
        continue;
      }
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < part.length()
              && Character.isLowSurrogate(part.charAt(i + 1));
      if (!pair) {
        String found =
            String.format(
                Locale.ROOT, "a text holds half a character (lone surrogate \\u%04X)", (int) c);
        throw fault("lone-surrogate", at, List.of(found, "Write the whole character or drop it"));
      }
      i++;
    }
    return part;
  }

  private InputException fault(String kind, JsonLocation at, List<String> foundAndRemedy) {
    return new InputException(SyntaxFault.at(source, at, kind, foundAndRemedy));
  }
}
