// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.plan.TreeStyle;

/**
 * How far the tree may be tilted, as the viewer sees it.
 *
 * @param sideways most tilt to either side, 0 to pi/2 [rad]
 * @param forward most tilt toward the viewer or away, 0 to pi/2 [rad]
 */
public record FrontRange(double sideways, double forward) {
  /** Further than this roots are seldom brought under the soil at once; no source. */
  private static final double USUAL = Math.toRadians(25);

  private static final double SLANTING = Math.toRadians(45);
  private static final double CASCADE = Math.toRadians(90);

  public FrontRange {
    if (!(sideways >= 0 && sideways <= Math.PI / 2 && forward >= 0 && forward <= Math.PI / 2)) {
      throw new IllegalArgumentException("tilts to " + sideways + " and " + forward);
    }
  }

  /** The same in both directions [rad]. */
  public static FrontRange square(double most) {
    return new FrontRange(most, most);
  }

  /**
   * What is looked at when nothing is said.
   *
   * <p>A slanting tree and a cascade are made by laying the trunk over, so that they are looked at
   * further to the sides; laid over as far toward the viewer, a tree shows its top and no front.
   */
  public static FrontRange usual(TreeStyle style) {
    return switch (style) {
      case SLANTING -> new FrontRange(SLANTING, USUAL);
      case CASCADE -> new FrontRange(CASCADE, USUAL);
      case UPRIGHT, BROOM, CLUMP, TWIN_TRUNK -> square(USUAL);
    };
  }
}
