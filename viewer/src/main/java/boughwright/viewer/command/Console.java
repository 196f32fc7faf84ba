// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * Where a command prints.
 *
 * @param out answers
 * @param err faults and progress
 * @param watched whether a person sits before it, who wants to see that something goes on
 * @param traced whether a defect shows its stack trace
 */
record Console(PrintStream out, PrintStream err, boolean watched, boolean traced) {
  Console {
    Objects.requireNonNull(out, "out");
    Objects.requireNonNull(err, "err");
  }

  /** The console of this process: UTF-8 whatever the locale says. */
  static Console ofProcess() {
    return new Console(
        stream(FileDescriptor.out),
        stream(FileDescriptor.err),
        System.console() != null,
        "1".equals(System.getenv("BOUGHWRIGHT_TRACE")));
  }

  private static PrintStream stream(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }

  /** Prints an answer, which ends with a line break. */
  void answer(String text) {
    out.print(text);
    out.flush();
  }
}
