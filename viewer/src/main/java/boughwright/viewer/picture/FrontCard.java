// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.design.shape.FrontPose;
import java.util.List;

/**
 * A front as it is drawn, with its words.
 *
 * @param pose front and tilt
 * @param title number and score
 * @param about azimuth and tilt
 * @param lines what speaks for it and against it, each a sentence
 */
public record FrontCard(FrontPose pose, String title, String about, List<String> lines) {
  public FrontCard {
    lines = List.copyOf(lines);
  }
}
