// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.design.shape.CutFace;
import java.util.Objects;

/**
 * A cut, how it is best made, and the face it leaves.
 *
 * @param face the face, cut square where the wood goes on beyond the cut
 * @param share width of the face over the caliper of the wood it is on [1]
 * @param advice how the cut is made
 */
public record AdvisedCut(CutFace face, double share, CutAdvice advice) {
  /** A wound shaped along the grain is this many times as long as wide (common practice). */
  public static final double SHAPED_SHORTEST = 3;

  /** The longest shape (common practice, no source). */
  public static final double SHAPED_LONGEST = 5;

  public AdvisedCut {
    Objects.requireNonNull(face, "face");
    Objects.requireNonNull(advice, "advice");
    if (!(share > 0)) {
      throw new IllegalArgumentException("a share of " + share);
    }
    if (face.across() && !(advice.angle() > 0)) {
      throw new IllegalArgumentException("wood cut across along its own length");
    }
  }

  /** Size of the wound across the grain, which decides when it closes [m]. */
  public double width() {
    return face.width();
  }

  /** Size of the wound along the grain, as long as the slant of the cut makes it [m]. */
  public double height() {
    return face.across() ? face.height() / Math.sin(advice.angle()) : face.height();
  }
}
