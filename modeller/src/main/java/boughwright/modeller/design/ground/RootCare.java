// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

/**
 * What the trade allows the roots of a kind of tree to lose at one repotting, and how often it is
 * repotted. Common practice, no source.
 */
public enum RootCare {
  /** A third, up to a half of a vigorous tree, every 2 to 3 years. */
  DECIDUOUS(1.0 / 3, 1.0 / 2, 2, 3),
  /** A quarter to a third, every 3 to 5 years. */
  CONIFER(1.0 / 4, 1.0 / 3, 3, 5),
  /** No rule of their own was found for others: as careful as for conifers. */
  OTHER(1.0 / 4, 1.0 / 3, 3, 5);

  private final double careful;
  private final double most;
  private final int fewestYears;
  private final int mostYears;

  RootCare(double careful, double most, int fewestYears, int mostYears) {
    this.careful = careful;
    this.most = most;
    this.fewestYears = fewestYears;
    this.mostYears = mostYears;
  }

  /** Share of the roots that may go at one repotting [1]. */
  public double careful() {
    return careful;
  }

  /** Share of the roots that a strong tree may lose at most [1]. */
  public double most() {
    return most;
  }

  /** Years between two repottings, at least. */
  public int fewestYears() {
    return fewestYears;
  }

  /** Years between two repottings, at most. */
  public int mostYears() {
    return mostYears;
  }
}
