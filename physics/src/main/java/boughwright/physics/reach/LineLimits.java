// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

/** What a line must be to be of use. */
public final class LineLimits {
  /** An anchor on the tree gives way at most this part of what the place gives [1] (assumption). */
  static final double ANCHOR_COMPLIANCE = 0.1;

  /**
   * A line is no shorter than this, with its knots and what tightens it [m] (common practice, no
   * source).
   */
  static final double SHORTEST = 0.02;

  /** A line is no longer than this [m] (assumption). */
  static final double LONGEST = 1.0;

  /**
   * Friction of a rubber or leather pad on bark [1] (assumption). A line that meets the branch at a
   * smaller angle to its axis than the friction holds needs its pad stopped from sliding.
   */
  static final double FRICTION = 0.5;

  /**
   * A line that meets the branch at a smaller angle than this to its axis is no choice: it presses
   * the branch into itself more than it bends it [rad] (assumption).
   */
  static final double LEAST_ANGLE = Math.toRadians(20);

  /** A line that is drawn in less is not worth tying [m] (a choice). */
  static final double LEAST_SHORTENING = 5e-4;

  /** A line that pulls less hangs loose [N] (a choice). */
  static final double LEAST_PULL = 0.05;

  /** Thinner wood than this is pushed aside by a line and not in its way [m] (assumption). */
  static final double TWIG = 0.004;

  private LineLimits() {}

  /** The smallest angle between line and axis at which friction alone holds the pad [rad]. */
  public static double holdsFrom() {
    return Math.PI / 2 - Math.atan(FRICTION);
  }
}
