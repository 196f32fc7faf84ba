// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** Files made beside their place are private at first; pictures may be read by others. */
final class PlainRights {
  private PlainRights() {}

  static void give(Path file) throws IOException {
    if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
    }
  }
}
