// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

/**
 * What a wood screw in side grain bears before it is drawn out: 108.25 G² D L in newtons and
 * millimetres (Forest Products Laboratory, Wood Handbook, chapter 8, wood screws; from memory), G
 * being the specific gravity of the dry wood.
 */
public final class AnchorScrew {
  /** Newtons over square millimetres [Pa]. */
  private static final double WITHDRAWAL = 108.25e6;

  /**
   * Boards of a box are mostly pine or spruce: specific gravity of the dry wood [1] (assumption).
   */
  public static final double BOX_WOOD = 0.40;

  /** Wood that is wet holds less [1] (National Design Specification; from memory). */
  static final double WET = 0.7;

  /** Drawing out over use [1]: as between the formula and its design values. */
  static final double SAFETY = 5.5;

  private AnchorScrew() {}

  /**
   * Pull along its axis at which a screw is drawn out of dry wood [N].
   *
   * @param gravity specific gravity of the wood [1]
   * @param diameter diameter of its shank [m]
   * @param thread length of thread in the wood [m]
   */
  public static double drawnOut(double gravity, double diameter, double thread) {
    return WITHDRAWAL * gravity * gravity * diameter * thread;
  }

  /** Length of thread that holds a pull safely in a wet box [m]. */
  public static double threadNeeded(double pull, double diameter) {
    return SAFETY * pull / (WET * drawnOut(BOX_WOOD, diameter, 1));
  }
}
