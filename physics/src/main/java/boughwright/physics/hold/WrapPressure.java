// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

/**
 * What raffia or tape does that is wound tightly round a branch: it presses on it all round, and so
 * the wood across the grain stands under that pressure before it is bent.
 */
public final class WrapPressure {
  /** Pull while it is wound on [N]. Assumption: a firm pull of one hand. */
  static final double WINDING_PULL = 20;

  /** Width of one band [m], and bands that lie over each other. Assumptions. */
  static final double BAND = 8e-3;

  static final double LAYERS = 2;

  /** What is left of the pull after some days, wet [1]. Assumption. */
  static final double LEFT = 0.5;

  private WrapPressure() {}

  /**
   * Pressure on a branch, the pull along the band over its width and the radius (hoop formula)
   * [Pa].
   *
   * @param radius radius of the branch [m]
   */
  public static double on(double radius) {
    return LEFT * LAYERS * WINDING_PULL / (BAND * radius);
  }
}
