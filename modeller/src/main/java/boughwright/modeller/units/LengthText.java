// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.util.Optional;

/** Reads a length as a person writes it in a cell or on a command line. */
public final class LengthText {
  private static final int LONGEST_FRACTION = 40;

  private LengthText() {}

  /**
   * A length as read.
   *
   * @param metres length [m]
   * @param written the unit that stood beside the number, if one did
   */
  public record Reading(double metres, Optional<LengthUnit> written) {}

  /**
   * A number in a unit known beforehand, or with its own unit beside it ({@code 24 mm}), which then
   * counts. In inches it may be a fraction ({@code 1 1/2}), as the tape shows it.
   *
   * @throws UnreadableException if there is no plain number or the unit is not known
   */
  public static Reading read(String text, LengthUnit unit, DecimalMark mark)
      throws UnreadableException {
    if (LengthUnit.named(Measures.unit(text)).orElse(unit) == LengthUnit.INCH) {
      String plain = Fraction.plain(text.substring(0, Math.min(text.length(), LONGEST_FRACTION)));
      String number = Measures.number(plain);
      if (text.length() <= LONGEST_FRACTION && Fraction.is(number)) {
        return new Reading(LengthUnit.INCH.toMetres(Fraction.read(number)), writtenUnit(text));
      }
    }
    BigDecimal number = DecimalText.read(Measures.number(text), mark);
    Optional<LengthUnit> written = writtenUnit(text);
    return new Reading(written.orElse(unit).toMetres(number), written);
  }

  /**
   * A number with its unit beside it, such as {@code 0,8 mm} [m].
   *
   * @throws UnreadableException if there is no plain number, or no unit, or none that is known
   */
  public static double metres(String text) throws UnreadableException {
    BigDecimal number = DecimalText.read(Measures.number(text), DecimalMark.EITHER);
    LengthUnit unit =
        writtenUnit(text)
            .orElseThrow(
                () ->
                    new UnreadableException(
                        "no-unit",
                        Measures.shown(text) + " has no unit",
                        "Write the unit beside the number: mm, cm, m or in"));
    return unit.toMetres(number);
  }

  private static Optional<LengthUnit> writtenUnit(String text) throws UnreadableException {
    String name = Measures.unit(text);
    Optional<LengthUnit> unit = LengthUnit.named(name);
    if (unit.isEmpty() && !name.isEmpty()) {
      throw new UnreadableException(
          "unknown-unit",
          Measures.shown(text) + ": the unit " + Measures.shown(name) + " is not known",
          "Use mm, cm, m or in");
    }
    return unit;
  }
}
