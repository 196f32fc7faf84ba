// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Backdrop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The photos that no folder holds yet, by the name the document calls them. A photo whose backdrop
 * was undone stays here, so that it can be done again. Photos are taken in on the event thread; any
 * thread may ask for them.
 */
public final class Photos {
  /** More than any photo a person takes of a tree [bytes]. */
  private static final long MOST_BYTES = 200_000_000;

  private final Map<String, byte[]> held = new ConcurrentHashMap<>();

  /**
   * Takes a photo in.
   *
   * @param fileName what its file is called
   * @param bytes the whole file
   * @param beside the tree file that the document is saved in; empty for none
   * @return the name that the document calls it by: that of the file if it lies beside the tree
   *     file already, else one with a mark of its content, so that it never meets another photo
   */
  public String take(String fileName, byte[] bytes, Optional<Path> beside) {
    String plain = plain(fileName);
    if (beside
        .flatMap(tree -> read(tree.resolveSibling(plain)))
        .filter(there -> Arrays.equals(there, bytes))
        .isPresent()) {
      return plain;
    }
    int dot = plain.lastIndexOf('.');
    String stem = dot > 0 ? plain.substring(0, dot) : plain;
    String end = dot > 0 ? plain.substring(dot) : "";
    String name = stem + "-" + mark(bytes) + end;
    held.put(name, bytes.clone());
    return name;
  }

  private static String mark(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest, 0, 4);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** A name that every file system takes. */
  private static String plain(String fileName) {
    String plain = fileName.replaceAll("[^A-Za-z0-9._-]+", "-").toLowerCase(Locale.ROOT);
    plain = plain.replaceAll("^[.-]+", "").replaceAll("\\.{2,}", ".");
    int most = 60;
    return plain.isEmpty() || plain.startsWith(".")
        ? "photo" + plain
        : plain.substring(Math.max(0, plain.length() - most)).replaceAll("^[.-]+", "");
  }

  /** The photos of a document that are held here, by name; the bytes are not to be changed. */
  public Map<String, byte[]> held(Document document) {
    Map<String, byte[]> own = new LinkedHashMap<>();
    for (Backdrop backdrop : document.backdrops()) {
      byte[] bytes = held.get(backdrop.photo());
      if (bytes != null) {
        own.put(backdrop.photo(), bytes);
      }
    }
    return own;
  }

  /** Holds photos that were held before the program ended, by their names. */
  public void hold(Map<String, byte[]> photos) {
    held.putAll(photos);
  }

  /**
   * The file of a photo; empty if it is missing or cannot be read.
   *
   * @param name what the document calls it
   * @param beside the tree file that the document is saved in; empty for none
   */
  public Optional<byte[]> bytes(String name, Optional<Path> beside) {
    byte[] here = held.get(name);
    if (here != null) {
      return Optional.of(here.clone());
    }
    return beside.flatMap(tree -> read(tree.resolveSibling(name)));
  }

  private static Optional<byte[]> read(Path file) {
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
        return Optional.empty();
      }
      return Optional.of(Files.readAllBytes(file));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * What has to be written beside a tree file so that it has all photos of its document; a photo
   * that is missing is left out.
   *
   * @param document what is saved
   * @param openedFrom the tree file it was saved in so far; empty for none
   * @param target the tree file it is saved in now
   * @return bytes by name, only of photos that are not there yet
   */
  public Map<String, byte[]> toWrite(Document document, Optional<Path> openedFrom, Path target) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (Backdrop backdrop : document.backdrops()) {
      String name = backdrop.photo();
      if (!Files.exists(target.resolveSibling(name))) {
        bytes(name, openedFrom).ifPresent(bytes -> files.put(name, bytes));
      }
    }
    return files;
  }
}
