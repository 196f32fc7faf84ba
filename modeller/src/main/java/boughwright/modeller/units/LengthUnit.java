// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A unit people measure trees in. */
public enum LengthUnit {
  MILLIMETRE(Factor.of("0.001"), "mm"),
  CENTIMETRE(Factor.of("0.01"), "cm"),
  METRE(Factor.of("1"), "m"),
  INCH(Factor.INCH, "in", "inch", "inches", "\"", "\u2033", "\u201D");

  private final Factor factor;
  private final List<String> names;

  LengthUnit(Factor factor, String... names) {
    this.factor = factor;
    this.names = List.of(names);
  }

  /** The unit a person means by a name, capitals or not; empty when there is none of that name. */
  public static Optional<LengthUnit> named(String name) {
    String plain = name.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(unit -> unit.names.contains(plain)).findFirst();
  }

  /** The short name used in files and headings. */
  public String symbol() {
    return names.get(0);
  }

  /**
   * A length in this unit as metres, exact but for one rounding.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public double toMetres(double value) {
    return factor.toSi(value);
  }

  double toMetres(BigDecimal value) {
    return factor.toSi(value);
  }

  /**
   * Metres as a length in this unit: of what {@link #toMetres} gave, the number that was written,
   * up to 15 digits.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public double fromMetres(double metres) {
    return factor.fromSi(metres);
  }
}
