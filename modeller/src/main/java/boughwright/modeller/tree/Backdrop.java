// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A photo of the tree that stands behind a view, to trace over.
 *
 * @param photo name of the picture file, beside the tree file or in a folder below it, with forward
 *     slashes
 * @param seenFrom azimuth it was taken from [rad]
 * @param metresPerPixel scale of the photo turned upright; empty until it is scaled [m]
 * @param baseX where the trunk base appears, from the left edge of the upright photo [pixels]
 * @param baseY the same from its upper edge [pixels]
 * @param shown how strongly it is shown, 0 to 1 [1]
 * @param extras fields of the file that this version does not know
 */
public record Backdrop(
    String photo,
    double seenFrom,
    OptionalDouble metresPerPixel,
    double baseX,
    double baseY,
    double shown,
    Map<String, Object> extras) {
  /** How strongly a photo is shown where nobody said [1]. */
  public static final double USUALLY_SHOWN = 0.6;

  private static final int LONGEST = 500;

  /** A name that every file system can keep: it ends in neither dot nor space. */
  private static final String PART =
      "[^/\\\\:*?\"<>|\\x00-\\x1f\\x7f]*[^/\\\\:*?\"<>|\\x00-\\x1f\\x7f. ]";

  private static final Pattern INSIDE = Pattern.compile(PART + "(?:/" + PART + ")*");

  /** Names that stand for devices on Windows, whatever follows their dot. */
  private static final Pattern DEVICE =
      Pattern.compile(
          "(?:.*/)?(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:[./].*)?",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  public Backdrop {
    Optional<String> fault = faultOfPhoto(photo);
    if (fault.isPresent()) {
      throw new IllegalArgumentException("photo " + fault.get());
    }
    Objects.requireNonNull(metresPerPixel, "metresPerPixel");
    if (metresPerPixel.isPresent() && !(metresPerPixel.getAsDouble() > 0)) {
      throw new IllegalArgumentException("a photo has a scale of more than 0");
    }
    if (!Double.isFinite(seenFrom + baseX + baseY)) {
      throw new IllegalArgumentException("a photo has a place");
    }
    if (!(shown >= 0 && shown <= 1)) {
      throw new IllegalArgumentException("a photo is shown from 0 to 1, not " + shown);
    }
    extras = Extras.copyOf(extras);
  }

  /** The same photo under another name. */
  public Backdrop named(String other) {
    return new Backdrop(other, seenFrom, metresPerPixel, baseX, baseY, shown, extras);
  }

  /**
   * What is wrong with the name of a photo, as words after "photo"; empty if nothing is. It must be
   * that of a file beside the tree file or in a folder below, on every system alike.
   */
  public static Optional<String> faultOfPhoto(String photo) {
    if (photo.isBlank()) {
      return Optional.of("is blank");
    }
    if (photo.length() > LONGEST) {
      return Optional.of("has more than " + LONGEST + " characters");
    }
    Optional<String> unseen = NameRules.faultOfName(photo);
    if (unseen.isPresent()) {
      return unseen;
    }
    return INSIDE.matcher(photo).matches() && !DEVICE.matcher(photo).matches()
        ? Optional.empty()
        : Optional.of("is no plain name of a file beside the tree file or in a folder below it");
  }
}
