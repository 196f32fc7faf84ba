// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A document that a program left behind which ended without being asked.
 *
 * @param kept the file that holds it
 * @param name what the tree is called; empty where the file cannot be read
 * @param file the file the document belongs to, if it has one
 * @param at when it was kept last
 */
public record LeftBehind(Path kept, String name, Optional<Path> file, Instant at) {

  /**
   * A document taken over.
   *
   * @param document the document
   * @param file the file it belongs to, if it has one
   * @param photos content of photos that are not beside its file yet, by the name the backdrops use
   * @param recovery goes on keeping it
   */
  public record Taken(
      Document document, Optional<Path> file, Map<String, byte[]> photos, Recovery recovery) {}

  static LeftBehind of(Path kept) {
    try {
      KeptFile read = KeptFile.read(kept.toString(), Files.readAllBytes(kept));
      return new LeftBehind(kept, read.document().tree().name(), read.file(), read.at());
    } catch (IOException | InputException e) {
      return new LeftBehind(kept, "", Optional.empty(), changed(kept));
    }
  }

  static Instant changed(Path kept) {
    try {
      return Files.getLastModifiedTime(kept).toInstant();
    } catch (IOException e) {
      return FileTime.fromMillis(0).toInstant();
    }
  }

  /**
   * Takes the document over; it stays kept until {@link Recovery#forget}.
   *
   * @return the document; empty if another program has taken it in the meantime
   * @throws InputException if it cannot be read; it stays where it is
   */
  public Optional<Taken> take() throws InputException {
    String key = key(kept);
    Path own = own(key);
    try {
      KeptFile read = KeptFile.read(kept.toString(), Files.readAllBytes(kept));
      Map<String, byte[]> photos = new TreeMap<>();
      for (Map.Entry<String, String> photo : read.photos().entrySet()) {
        Path bytes = kept.resolveSibling(Path.of(photo.getValue()).getFileName());
        if (Files.exists(bytes)) {
          photos.put(photo.getKey(), Files.readAllBytes(bytes));
        }
      }
      if (!claim(own)) {
        return Optional.empty();
      }
      Recovery recovery = new Recovery(kept.toAbsolutePath().getParent(), key);
      return Optional.of(new Taken(read.document(), read.file(), photos, recovery));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new InputException(
          Problem.fault(
              Place.of(kept.toString()),
              "cannot-recover",
              "what was kept cannot be read: " + SafeSave.reason(e),
              "Open the last saved file; the kept one is left where it is"));
    }
  }

  /** Gives the document up: it is deleted, unless another program has taken it. */
  public void discard() {
    try {
      String key = key(kept);
      if (claim(own(key))) {
        new Recovery(kept.toAbsolutePath().getParent(), key).forget();
      }
    } catch (IOException e) {
      return;
    }
  }

  /** What follows the owner in the name of a kept file; its name where it is none. */
  static String key(Path kept) {
    String name = kept.getFileName().toString();
    int start = name.indexOf('-', name.indexOf('-') + 1) + 1;
    return name.endsWith(Recovery.KEPT)
        ? name.substring(start, name.length() - Recovery.KEPT.length())
        : name;
  }

  private Path own(String key) {
    return kept.resolveSibling(Owner.self().prefix() + key + Recovery.KEPT);
  }

  /** Only one program can give a file its own name; false if another was first. */
  private boolean claim(Path own) throws IOException {
    try {
      Files.move(kept, own, StandardCopyOption.ATOMIC_MOVE);
      return true;
    } catch (NoSuchFileException e) {
      return false;
    }
  }
}
