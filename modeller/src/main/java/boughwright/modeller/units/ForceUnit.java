// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

/** A unit people read off a spring balance. */
public enum ForceUnit {
  NEWTON(Factor.of("1"), "N"),
  /** The weight of a kilogram under standard gravity. */
  KILOGRAM_FORCE(Factor.GRAVITY, "kgf"),
  /** The weight of an avoirdupois pound under standard gravity. */
  POUND_FORCE(Factor.POUND.times(Factor.GRAVITY), "lbf");

  private final Factor factor;
  private final String symbol;

  ForceUnit(Factor factor, String symbol) {
    this.factor = factor;
    this.symbol = symbol;
  }

  public String symbol() {
    return symbol;
  }

  /**
   * A force in this unit as newtons.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public double toNewtons(double value) {
    return factor.toSi(value);
  }

  /**
   * Newtons as a force in this unit.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public double fromNewtons(double newtons) {
    return factor.fromSi(newtons);
  }
}
