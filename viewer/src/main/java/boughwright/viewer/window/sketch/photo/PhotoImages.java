// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.viewer.window.work.Workspace;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The pictures of the photos, read once each. */
final class PhotoImages {
  private final Map<String, Optional<Image>> known = new HashMap<>();

  /**
   * A photo turned upright.
   *
   * @param picture its picture, which may be smaller than the photo
   * @param width width of the photo [pixels]
   * @param height height of the photo [pixels]
   */
  record Image(BufferedImage picture, int width, int height) {}

  PhotoImages(Workspace workspace) {}

  Optional<Image> get(String name) {
    return known.getOrDefault(name, Optional.empty());
  }
}
