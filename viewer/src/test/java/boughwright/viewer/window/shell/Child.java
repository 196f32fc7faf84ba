// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Another Java process with the same classes, for what cannot be tried in this one. */
final class Child {
  private final Process process;
  private final BufferedReader out;

  private Child(Process process) {
    this.process = process;
    out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  /** Starts the main method of a class. */
  static Child start(Path home, List<String> options, Class<?> main, String... args)
      throws IOException {
    ProcessBuilder builder = java(options, main, args);
    builder.environment().put("BOUGHWRIGHT_HOME", home.toString());
    return new Child(builder.start());
  }

  /** Starts the main method of a class by another program, to which its command line is added. */
  static Child startBy(List<String> starter, Class<?> main, String... args) throws IOException {
    ProcessBuilder builder = java(List.of(), main, args);
    builder.command().addAll(0, starter);
    return new Child(builder.start());
  }

  private static ProcessBuilder java(List<String> options, Class<?> main, String... args) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(options);
    words.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    words.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(words);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    return builder;
  }

  /** The next line it prints; null at the end. */
  String line() throws IOException {
    return out.readLine();
  }

  /** All lines it prints until its end. */
  List<String> lines() throws IOException {
    List<String> lines = new ArrayList<>();
    for (String line = line(); line != null; line = line()) {
      lines.add(line);
    }
    return lines;
  }

  /** Its exit code, once it has ended. */
  int code() throws InterruptedException {
    return process.waitFor();
  }

  /** Stops it as SIGKILL does: it cannot do anything any more. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    process.waitFor();
  }
}
