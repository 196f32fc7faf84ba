// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Backdrop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Saves photos beside a tree file, then the tree; a failure takes back what was written. */
final class PhotoSave {
  private static final int MOST_NAMES = 10_000;

  private final Path path;
  private final Path folder;

  /** Files and folders made, the last one first. */
  private final Deque<Path> made = new ArrayDeque<>();

  PhotoSave(Path path) throws InputException {
    this.path = path;
    this.folder = SafeSave.realPath(path).getParent();
  }

  Document save(Document document, Map<String, byte[]> photos) throws InputException {
    boolean done = false;
    try {
      Document renamed = renamed(document, written(document, photos));
      TreeFiles.write(renamed, path);
      done = true;
      return renamed;
    } catch (IOException | SecurityException e) {
      throw refuse(
          path,
          "cannot-save",
          "the tree is not saved, for a photo cannot be put beside it: " + SafeSave.reason(e),
          "Save it in another folder, or take the photo out");
    } finally {
      if (!done) {
        takeBack();
      }
    }
  }

  /** The name each photo has now, by the name it had. */
  private Map<String, String> written(Document document, Map<String, byte[]> photos)
      throws IOException, InputException {
    Set<String> used =
        document.backdrops().stream().map(Backdrop::photo).collect(Collectors.toSet());
    Set<String> kept = new HashSet<>(used);
    kept.removeAll(photos.keySet());
    Map<String, String> names = new HashMap<>();
    for (String name : used.stream().filter(photos::containsKey).sorted().toList()) {
      String now = written(name, photos.get(name), kept);
      kept.add(now);
      names.put(name, now);
    }
    return names;
  }

  private String written(String name, byte[] bytes, Set<String> kept)
      throws IOException, InputException {
    for (int n = 1; n < MOST_NAMES; n++) {
      String next = n == 1 ? name : numbered(name, n);
      Path place = place(next);
      if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS) && !kept.contains(next)) {
        makeFolders(place.getParent());
        place(next);
        made.push(place);
        SafeSave.writeForced(place, bytes);
        SafeSave.forceFolder(place.getParent());
        return next;
      }
      if (holds(place, bytes)) {
        return next;
      }
    }
    throw new IOException("every name like it is taken");
  }

  private static boolean holds(Path place, byte[] bytes) throws IOException {
    return Files.isRegularFile(place)
        && Files.size(place) == bytes.length
        && Arrays.equals(Files.readAllBytes(place), bytes);
  }

  private static String numbered(String name, int n) {
    int dot = name.lastIndexOf('.');
    boolean ending = dot > name.lastIndexOf('/') + 1;
    return ending ? name.substring(0, dot) + "-" + n + name.substring(dot) : name + "-" + n;
  }

  /** Where a photo lies; refused where a link leads out of the folder of the tree file. */
  Path place(String name) throws InputException {
    Path place = folder.resolve(name).normalize();
    Path there = place;
    while (!Files.exists(there) && there.getParent() != null) {
      there = there.getParent();
    }
    try {
      boolean inside = !place.equals(folder) && place.startsWith(folder);
      boolean linkedOut =
          there.startsWith(folder) && !there.toRealPath().startsWith(folder.toRealPath());
      if (inside && !linkedOut) {
        return place;
      }
    } catch (IOException e) {
      throw refuse(
          place, "cannot-find-photo", "it cannot be looked at: " + SafeSave.reason(e), "Check it");
    }
    throw refuse(
        place,
        "photo-elsewhere",
        "a link leads out of the folder of the tree file",
        "Put the photo itself beside the tree file");
  }

  private void makeFolders(Path parent) throws IOException {
    Deque<Path> missing = new ArrayDeque<>();
    for (Path one = parent; !Files.exists(one); one = one.getParent()) {
      missing.push(one);
    }
    for (Path one : missing) {
      if (one.startsWith(folder) && !one.equals(folder)) {
        Files.createDirectory(one);
        made.push(one);
      }
    }
  }

  private void takeBack() {
    for (Path one : made) {
      try {
        Files.deleteIfExists(one);
      } catch (IOException e) {
        continue;
      }
    }
  }

  private static Document renamed(Document document, Map<String, String> names) {
    List<Backdrop> backdrops =
        document.backdrops().stream()
            .map(one -> one.named(names.getOrDefault(one.photo(), one.photo())))
            .toList();
    return document.withBackdrops(backdrops);
  }

  private static InputException refuse(Path path, String kind, String found, String remedy) {
    return new InputException(Problem.fault(Place.of(path.toString()), kind, found, remedy));
  }
}
