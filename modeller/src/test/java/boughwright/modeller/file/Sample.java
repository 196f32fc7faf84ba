// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The valid tree file that has every field of version 1. */
final class Sample {
  private Sample() {}

  static byte[] bytes() {
    try (InputStream in = Sample.class.getResourceAsStream("full.tree.json")) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text() {
    return new String(bytes(), StandardCharsets.UTF_8);
  }
}
