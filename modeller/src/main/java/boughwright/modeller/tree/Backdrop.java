// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

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
  public Backdrop {
    Objects.requireNonNull(photo, "photo");
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
}
