// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.util.Set;

/** Reads an angle as a person writes it in a cell. */
public final class AngleText {
  private static final Set<String> DEGREES = Set.of("", "\u00B0", "deg");

  private AngleText() {}

  /**
   * An angle in degrees, with or without {@code °} or {@code deg} beside it [deg].
   *
   * @throws UnreadableException if there is no plain number or another unit is beside it
   */
  public static double degrees(String text, DecimalMark mark) throws UnreadableException {
    double degrees = DecimalText.read(Measures.number(text), mark).doubleValue();
    String unit = Measures.unit(text);
    if (!DEGREES.contains(unit)) {
      throw new UnreadableException(
          "unknown-unit",
          Measures.shown(text) + ": the unit " + Measures.shown(unit) + " is not degrees",
          "Write degrees, such as 35");
    }
    return degrees;
  }
}
