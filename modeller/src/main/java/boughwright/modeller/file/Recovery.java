// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;

/**
 * Keeps one open document in a folder while it has changes that no file holds, so that they outlive
 * a program that ends without being asked.
 *
 * <p>Each document is one whole file that is replaced in one step, and its new photos are files
 * beside it that are written once. The name of the file says which running program it belongs to;
 * what belongs to none any more is {@link #leftBehind}. A disk that refuses never stops the work:
 * it is told once, and again after it has worked in between. Safe to be used by several threads.
 */
public final class Recovery {
  static final String KEPT = ".kept";
  static final String PHOTO = ".photo";
  static final String TEMPORARY = ".tmp";

  /** A photo is written right before the document that names it. */
  private static final Duration PHOTO_WAITS = Duration.ofDays(1);

  private final Path folder;
  private final String key;
  private final String stem;
  private final Set<String> written = new HashSet<>();
  private Optional<KeptFile> last = Optional.empty();
  private boolean told;

  /**
   * The keeping of one open document of this program.
   *
   * @param folder where to keep it; made when it is needed
   */
  public Recovery(Path folder) {
    this(folder, UUID.randomUUID().toString().substring(0, 13));
  }

  /** Goes on keeping what was left behind under a key. */
  Recovery(Path folder, String key) {
    this.folder = folder.toAbsolutePath();
    this.key = key;
    this.stem = Owner.self().prefix() + key;
  }

  /**
   * Keeps the document as it is now, without photos of its own.
   *
   * @see #keep(Document, Optional, Map)
   */
  public Optional<Problem> keep(Document document, Optional<Path> file) {
    return keep(document, file, Map.of());
  }

  /**
   * Keeps the document as it is now. Nothing is written where nothing has changed since.
   *
   * @param document the document
   * @param file the file it came from or was saved to; empty if it has none
   * @param photos content of photos that are not beside its file yet, by the name the backdrops use
   * @return what the disk refuses, once; empty if it is kept, or was told before
   */
  public synchronized Optional<Problem> keep(
      Document document, Optional<Path> file, Map<String, byte[]> photos) {
    try {
      Files.createDirectories(folder);
      KeptFile kept =
          new KeptFile(document, file.map(Path::toAbsolutePath), Instant.EPOCH, photos(photos));
      if (!last.equals(Optional.of(kept)) || !Files.exists(kept())) {
        replace(kept.at(Instant.now()).bytes());
        last = Optional.of(kept);
      }
      told = false;
      return Optional.empty();
    } catch (IOException | RuntimeException e) {
      boolean first = !told;
      told = true;
      return first ? Optional.of(refused(e)) : Optional.empty();
    }
  }

  /** Forgets the document: it is saved, or the person gave its changes up. */
  public synchronized void forget() {
    last = Optional.empty();
    written.clear();
    delete(kept());
    for (Path one : files(folder)) {
      if (isPhotoOf(one, key)) {
        delete(one);
      }
    }
  }

  static boolean isPhotoOf(Path file, String key) {
    String name = file.getFileName().toString();
    return name.startsWith(key + "-") && name.endsWith(PHOTO);
  }

  /** Documents that programs left behind which no longer run, the newest first. */
  public static List<LeftBehind> leftBehind(Path folder) {
    List<LeftBehind> left = new ArrayList<>();
    for (Path file : files(folder)) {
      String name = file.getFileName().toString();
      boolean orphan = Owner.of(name).filter(owner -> !owner.isRunning()).isPresent();
      if (orphan && name.endsWith(TEMPORARY)) {
        delete(file);
      } else if (orphan && name.endsWith(KEPT)) {
        left.add(LeftBehind.of(file));
      }
    }
    dropPhotos(folder);
    left.sort(Comparator.comparing(LeftBehind::at).reversed());
    return List.copyOf(left);
  }

  /** Photos whose document was never kept, because the program ended in between. */
  private static void dropPhotos(Path folder) {
    List<Path> files = files(folder);
    Instant old = Instant.now().minus(PHOTO_WAITS);
    for (Path photo : files) {
      String name = photo.getFileName().toString();
      boolean wanted =
          !name.endsWith(PHOTO)
              || files.stream().anyMatch(kept -> isPhotoOf(photo, LeftBehind.key(kept)));
      if (!wanted && LeftBehind.changed(photo).isBefore(old)) {
        delete(photo);
      }
    }
  }

  private Path kept() {
    return folder.resolve(stem + KEPT);
  }

  /** Writes each photo once; gives the file that holds it by its name. */
  private Map<String, String> photos(Map<String, byte[]> photos) throws IOException {
    Map<String, String> files = new TreeMap<>();
    for (Map.Entry<String, byte[]> photo : photos.entrySet()) {
      String name = key + "-" + KeptFile.digest(photo.getValue()) + PHOTO;
      if (!written.contains(name) || !Files.exists(folder.resolve(name))) {
        move(photo.getValue(), folder.resolve(name));
        written.add(name);
      }
      files.put(photo.getKey(), name);
    }
    return files;
  }

  private void replace(byte[] bytes) throws IOException {
    move(bytes, kept());
  }

  private void move(byte[] bytes, Path target) throws IOException {
    Path beside =
        folder.resolve(stem + "-" + UUID.randomUUID().toString().substring(0, 8) + TEMPORARY);
    try {
      SafeSave.writeForced(beside, bytes);
      Files.move(
          beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private Problem refused(Exception e) {
    return Problem.warning(
        Place.of(folder.toString()),
        "cannot-keep",
        "changes are not kept against a power cut: " + SafeSave.reason(e),
        "Go on working, and save often");
  }

  static List<Path> files(Path folder) {
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
      all.forEach(files::add);
    } catch (IOException | RuntimeException e) {
      return files;
    }
    return files;
  }

  static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      return;
    }
  }
}
