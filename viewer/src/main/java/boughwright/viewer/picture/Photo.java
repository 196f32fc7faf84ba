// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A photo of a tree, turned upright, to trace over.
 *
 * <p>Places in it are told in pixels of the whole photo turned upright, from its upper left corner,
 * also where fewer pixels are held.
 *
 * @param image the picture upright, of at most some 16 million pixels
 * @param width pixels of the whole upright photo, across
 * @param height pixels of the whole upright photo, down
 * @param warnings what the person should know about it
 */
public record Photo(BufferedImage image, int width, int height, List<Problem> warnings) {
  /** Bytes of a file; a phone's largest photos have some 30 MB. */
  static final long MOST_BYTES = 50L << 20;

  public Photo {
    Objects.requireNonNull(image, "image");
    warnings = List.copyOf(warnings);
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("a photo has pixels, not " + width + " x " + height);
    }
  }

  /**
   * Reads a JPEG or PNG file.
   *
   * @throws InputException with one line if it is no photo that can be read
   */
  public static Photo read(Path file) throws InputException {
    Place place = Place.of(file.toString());
    return read(place, bytes(file, place));
  }

  /**
   * Reads the bytes of a JPEG or PNG file.
   *
   * @param name what the person calls it, for messages
   * @throws InputException with one line if it is no photo that can be read
   */
  public static Photo read(String name, byte[] bytes) throws InputException {
    Place place = Place.of(name);
    if (bytes.length > MOST_BYTES) {
      throw tooManyBytes(place, bytes.length);
    }
    return read(place, bytes);
  }

  /** The bytes of a photo's file, within the limits; whether they are a photo is not looked at. */
  public static byte[] bytes(Path file) throws InputException {
    return bytes(file, Place.of(file.toString()));
  }

  private static byte[] bytes(Path file, Place place) throws InputException {
    try {
      if (!Files.exists(file)) {
        throw fault(place, "no-photo", "there is no such file", "Check its name and folder");
      }
      if (!Files.isRegularFile(file)) {
        throw fault(place, "no-photo", "it is no file", "Choose a JPEG or PNG picture");
      }
      if (Files.size(file) > MOST_BYTES) {
        throw tooManyBytes(place, Files.size(file));
      }
      return Files.readAllBytes(file);
    } catch (IOException | SecurityException e) {
      String reason = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
      throw fault(place, "no-photo", "it cannot be read: " + reason, "Check its name and rights");
    }
  }

  private static InputException tooManyBytes(Place place, long bytes) {
    return fault(
        place,
        "photo-too-large",
        String.format(
            Locale.ROOT,
            "the file has %d MB, at most %d are read",
            (bytes + (1 << 20) - 1) >> 20,
            MOST_BYTES >> 20),
        "Make a smaller copy of it, or save it as JPEG");
  }

  private static Photo read(Place place, byte[] bytes) throws InputException {
    return new PhotoReader(place, bytes).photo();
  }

  static InputException fault(Place place, String kind, String found, String remedy) {
    return new InputException(Problem.fault(place, kind, found, remedy));
  }
}
