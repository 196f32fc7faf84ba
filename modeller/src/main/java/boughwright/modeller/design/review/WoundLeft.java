// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.plan.Spot;
import java.util.Objects;

/**
 * The wound a cut leaves and how the cut is made.
 *
 * @param cut the cut as a plan holds it
 * @param on the place of the wound: on the parent where a whole branch goes
 * @param round where round the wood there, as for wounds of the tree file [rad]; 0 where the wood
 *     is cut across
 * @param across whether the wood is cut across, so that the wound is its whole section
 * @param width across the grain, the size that decides when it closes [m]
 * @param height along the grain as cut [m]
 * @param share width over the caliper of the wood it is on [1]
 * @param advice how the cut is made
 */
public record WoundLeft(
    Spot cut,
    Spot on,
    double round,
    boolean across,
    double width,
    double height,
    double share,
    CutAdvice advice) {
  /** A wound shaped along the grain is this many times as long as wide (common practice). */
  public static final double SHAPED_SHORTEST = 3;

  /** The longest shape (common practice, no source). */
  public static final double SHAPED_LONGEST = 5;

  public WoundLeft {
    Objects.requireNonNull(cut, "cut");
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(advice, "advice");
    if (!(width > 0 && height > 0 && share > 0)) {
      throw new IllegalArgumentException("a wound of " + width + " by " + height);
    }
  }
}
