// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * What a file held at one time.
 *
 * @param digest digest of its bytes
 */
record Fingerprint(String digest) {

  /** What a file holds now; empty if there is none or it cannot be read. */
  static Optional<Fingerprint> of(Path file) {
    try {
      if (!Files.isRegularFile(file)) {
        return Optional.empty();
      }
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return Optional.of(new Fingerprint(HexFormat.of().formatHex(digest)));
    } catch (IOException | NoSuchAlgorithmException e) {
      return Optional.empty();
    }
  }
}
