// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Markdown that is printed as it grows and kept in a file. */
final class Report {
  private final Path file;
  private final StringBuilder text = new StringBuilder();

  Report(Path file) {
    this.file = file;
  }

  void line(String format, Object... values) throws IOException {
    String line = String.format(Locale.ROOT, format, values);
    System.out.println(line);
    text.append(line).append('\n');
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
