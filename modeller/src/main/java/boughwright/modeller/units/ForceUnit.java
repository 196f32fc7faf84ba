// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A unit people read off a spring balance. */
public enum ForceUnit {
  NEWTON(Factor.of("1"), "N", "newton", "newtons"),
  /** The weight of a kilogram under standard gravity. */
  KILOGRAM_FORCE(Factor.GRAVITY, "kgf", "kg", "kp"),
  /** The weight of an avoirdupois pound under standard gravity. */
  POUND_FORCE(Factor.POUND.times(Factor.GRAVITY), "lbf", "lb", "lbs");

  private final Factor factor;
  private final List<String> names;

  ForceUnit(Factor factor, String... names) {
    this.factor = factor;
    this.names = List.of(names);
  }

  /** The unit a person means by a name, capitals or not; empty when there is none of that name. */
  public static Optional<ForceUnit> named(String name) {
    return Arrays.stream(values())
        .filter(unit -> unit.names.stream().anyMatch(name::equalsIgnoreCase))
        .findFirst();
  }

  public String symbol() {
    return names.get(0);
  }

  /**
   * A force in this unit as newtons.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public double toNewtons(double value) {
    return factor.toSi(value);
  }

  double toNewtons(BigDecimal value) {
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
