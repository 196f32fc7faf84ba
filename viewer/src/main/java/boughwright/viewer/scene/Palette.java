// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.plan.Material;

/** The colours of the things in a scene; our own choice. */
public final class Palette {
  /** Bark without strain: a grey brown of middle lightness. */
  public static final Colour BARK = Colour.of(new Lab(54, 3, 8));

  /** Bark of roots, a little darker and greyer. */
  public static final Colour ROOT_BARK = Colour.of(new Lab(49, 3, 8));

  /** Weathered wood without bark. */
  public static final Colour DEADWOOD = Colour.of(new Lab(80, 1, 8));

  /** Freshly cut wood. */
  public static final Colour CUT_WOOD = Colour.of(new Lab(86, 4, 26));

  /** Callus round a wound. */
  public static final Colour CALLUS = Colour.of(new Lab(43, 6, 13));

  /** The tree as measured, where the bent pose has left it. */
  public static final Colour GHOST = Colour.of(new Lab(66, -4, -9));

  /** Wood that the plan cuts away. */
  public static final Colour REMOVED = Colour.of(new Lab(62, 2, 2));

  /** Lines, pads, anchors, weights. */
  public static final Colour FITTING = Colour.of(new Lab(26, -1, -6));

  /** Pads under lines. */
  public static final Colour PAD = Colour.of(new Lab(33, 2, 6));

  /** Raffia: a light straw. */
  public static final Colour RAFFIA = Colour.of(new Lab(82, 4, 34));

  /** Grooves and cuts that are made to bend the wood: nearly black. */
  public static final Colour GROOVE = Colour.of(new Lab(12, 4, 6));

  /** Leaves of a tree that stands bare in winter: a soft green, which no strain has. */
  public static final Colour LEAVES = Colour.of(new Lab(60, -22, 30));

  /** Leaves or needles of an evergreen: a darker green. */
  public static final Colour NEEDLES = Colour.of(new Lab(46, -20, 17));

  /** Edges of what the tree stands in. */
  public static final Colour CONTAINER = Colour.of(new Lab(58, 3, 12));

  /** Annealed copper: a dark red brown, darker than stretched bark. */
  private static final Colour COPPER = Colour.of(new Lab(42, 30, 30));

  /** Aluminium: nearly white. */
  private static final Colour ALUMINIUM = Colour.of(new Lab(91, -1, 3));

  /** Soft steel: nearly black. */
  private static final Colour STEEL = Colour.of(new Lab(21, -1, -3));

  /** Stainless steel: a bright blue grey. */
  private static final Colour STAINLESS = Colour.of(new Lab(68, -5, -13));

  /** Soil. */
  public static final Colour SOIL = Colour.of(new Lab(84, 2, 8));

  private static final Lab FIRST_STAGE = new Lab(76, 12, -12);
  private static final Lab LAST_STAGE = new Lab(36, 24, -26);

  private Palette() {}

  /** The colour of a coil or a line. */
  public static Colour metal(Material material) {
    return switch (material) {
      case COPPER_ANNEALED -> COPPER;
      case ALUMINIUM -> ALUMINIUM;
      case STEEL_SOFT -> STEEL;
      case STAINLESS -> STAINLESS;
      case CORD -> FITTING;
    };
  }

  /**
   * The tone of a pose on the way to the bend: a mauve that grows darker.
   *
   * @param n number of the pose, 0 for the first
   * @param count how many there are
   */
  public static Colour stage(int n, int count) {
    double part = count < 2 ? 0.5 : (double) n / (count - 1);
    return Colour.of(FIRST_STAGE.toward(LAST_STAGE, part));
  }
}
