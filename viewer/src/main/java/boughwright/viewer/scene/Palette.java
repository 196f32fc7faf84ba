// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

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

  /** Soil. */
  public static final Colour SOIL = Colour.of(new Lab(84, 2, 8));

  private Palette() {}
}
