// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell.kept;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The folder of settings, recent files and recovery. */
public final class HomeFolder {
  private static final String NAME = "boughwright";

  private HomeFolder() {}

  /** The folder of this process. */
  public static Path ofProcess() {
    return of(
        System.getenv(), System.getProperty("os.name"), Path.of(System.getProperty("user.home")));
  }

  /**
   * BOUGHWRIGHT_HOME if it is set, else where the system keeps such things.
   *
   * @param environment variables of the process
   * @param system name of the operating system, as Java gives it
   * @param user the person's own folder
   */
  public static Path of(Map<String, String> environment, String system, Path user) {
    Optional<Path> own = folder(environment, "BOUGHWRIGHT_HOME");
    if (own.isPresent()) {
      return own.get().toAbsolutePath();
    }
    String low = system.toLowerCase(Locale.ROOT);
    if (low.startsWith("windows")) {
      return folder(environment, "APPDATA")
          .orElse(user.resolve("AppData").resolve("Roaming"))
          .resolve("Boughwright");
    }
    if (low.startsWith("mac")) {
      return user.resolve("Library").resolve("Application Support").resolve("Boughwright");
    }
    return folder(environment, "XDG_STATE_HOME")
        .filter(Path::isAbsolute)
        .orElse(user.resolve(".local").resolve("state"))
        .resolve(NAME);
  }

  private static Optional<Path> folder(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name)).filter(v -> !v.isBlank()).map(Path::of);
  }
}
