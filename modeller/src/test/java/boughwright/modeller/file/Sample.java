// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Valid tree files; {@code full.tree.json} has every field of version 1. */
final class Sample {
  private Sample() {}

  static byte[] bytes() {
    return bytes("full.tree.json");
  }

  static byte[] bytes(String name) {
    try (InputStream in = Sample.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text() {
    return text("full.tree.json");
  }

  static String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }
}
