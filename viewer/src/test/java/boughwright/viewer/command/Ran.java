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
