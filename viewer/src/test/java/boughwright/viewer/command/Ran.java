// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A command that was run in this process.
 *
 * @param code exit code
 * @param out what it printed as its answer
 * @param err what it printed about faults
 */
public record Ran(int code, String out, String err) {
  /** Runs the program with words as given; paths are given as they are. */
  public static Ran command(Object... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = new Console(stream(out), stream(err), false, false);
    List<String> args =
        Arrays.stream(words)
            .map(word -> word instanceof Path path ? path.toString() : (String) word)
            .toList();
    int code = Boughwright.run(console, args);
    return new Ran(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** Runs the program with words as a person types them, none of which holds a space. */
  static Ran typed(String line) {
    return command((Object[]) line.split(" "));
  }

  /** Runs a verb on a file with options as given. */
  static Ran verb(String verb, Path file, Object... options) {
    return command(Stream.concat(Stream.of(verb, file), Stream.of(options)).toArray());
  }

  /** The same with options as a person types them, none of which holds a space. */
  static Ran line(String verb, Path file, String options) {
    return verb(verb, file, (Object[]) options.split(" "));
  }

  /** The one of a list that has a word under a key. */
  static JsonNode one(JsonNode list, String key, String word) {
    for (JsonNode one : list) {
      if (one.get(key).asText().equals(word)) {
        return one;
      }
    }
    throw new AssertionError("no " + word + " in " + list);
  }

  static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, false, StandardCharsets.UTF_8);
  }

  /** The answer with every run of spaces and line breaks as one space. */
  String words() {
    return out.replaceAll("\\s+", " ");
  }

  public JsonNode json() {
    try {
      return new ObjectMapper().readTree(out);
    } catch (JsonProcessingException e) {
      throw new AssertionError("no JSON: " + out, e);
    }
  }
}
