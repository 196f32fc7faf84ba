// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

/**
 * How a cut is made. All of it is common practice without source; the shares are from memory.
 *
 * @param angle of the cut to the axis of the wood it is on [rad]: 0 for a cut along the parent
 * @param stub left at first, for what dies back, and taken off when that is over [m]
 * @param depth how deep the middle is hollowed under the edge, so that callus rolls in level [m]
 */
public record CutAdvice(double angle, double stub, double depth) {
  /** A branch is shortened at a slant, so that water runs off. */
  private static final double SLANT = Math.toRadians(45);

  /** Stub over caliper: broadleaved trees may die back to the next node, conifers keep a stub. */
  private static final double STUB_BROADLEAF = 1;

  private static final double STUB_CONIFER = 2;

  /** Depth of the hollow over the width of the wound. */
  private static final double HOLLOW_BROADLEAF = 1.0 / 6;

  /** Resin closes less by rolling in; the hollow is slighter. */
  private static final double HOLLOW_CONIFER = 1.0 / 10;

  public CutAdvice {
    if (!(angle >= 0 && angle <= Math.PI / 2 && stub >= 0 && depth >= 0)) {
      throw new IllegalArgumentException("a cut at " + angle + ", " + stub + ", " + depth);
    }
  }

  /** For a whole branch taken off. */
  static CutAdvice flush(WoodKind wood, double caliper) {
    return new CutAdvice(0, stub(wood) * caliper, hollow(wood) * caliper);
  }

  /** For wood cut across beyond a node: the stub dies back, nothing is hollowed. */
  static CutAdvice across(WoodKind wood, double caliper) {
    return new CutAdvice(SLANT, stub(wood) * caliper, 0);
  }

  private static double stub(WoodKind wood) {
    return wood == WoodKind.BROADLEAF ? STUB_BROADLEAF : STUB_CONIFER;
  }

  private static double hollow(WoodKind wood) {
    return wood == WoodKind.CONIFER ? HOLLOW_CONIFER : HOLLOW_BROADLEAF;
  }
}
