// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import boughwright.modeller.units.AngleText;
import boughwright.modeller.units.DecimalMark;
import boughwright.modeller.units.DecimalText;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.LengthText;
import boughwright.modeller.units.LengthUnit;
import boughwright.modeller.units.UnreadableException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** The sorts of quantity there are. */
final class Measures {
  private Measures() {}

  /** A number with at most so many decimals and no needless zeros. */
  static String plain(double value, int decimals) {
    BigDecimal shown =
        new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return (shown.signum() == 0 ? BigDecimal.ZERO : shown).toPlainString();
  }

  private static double number(String text, String unit) throws UnreadableException {
    String typed = text.strip();
    String low = typed.toLowerCase(Locale.ROOT);
    if (!unit.isEmpty() && low.endsWith(unit.toLowerCase(Locale.ROOT))) {
      typed = typed.substring(0, typed.length() - unit.length());
    }
    return DecimalText.read(typed, DecimalMark.EITHER).doubleValue();
  }

  /** Lengths. */
  static final class Length implements Measure {
    @Override
    public String unit(DisplayUnits units) {
      return units.length().symbol();
    }

    @Override
    public String show(double value, DisplayUnits units) {
      return plain(units.length().fromMetres(value), units.length() == LengthUnit.INCH ? 3 : 1);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      return LengthText.read(text, units.length(), DecimalMark.EITHER).metres();
    }

    @Override
    public double step(DisplayUnits units) {
      return units.length().toMetres(units.length() == LengthUnit.INCH ? 0.125 : 1);
    }
  }

  /** Forces. */
  static final class Force implements Measure {
    @Override
    public String unit(DisplayUnits units) {
      return units.force().symbol();
    }

    @Override
    public String show(double value, DisplayUnits units) {
      return plain(units.force().fromNewtons(value), 2);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      return units.force().toNewtons(number(text, units.force().symbol()));
    }

    @Override
    public double step(DisplayUnits units) {
      return units.force().toNewtons(units.force().fromNewtons(1) >= 1 ? 1 : 0.1);
    }
  }

  /** Angles. */
  static final class Angle implements Measure {
    @Override
    public String unit(DisplayUnits units) {
      return "\u00B0";
    }

    @Override
    public String show(double value, DisplayUnits units) {
      return plain(Math.toDegrees(value), 1);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      return Math.toRadians(AngleText.degrees(text, DecimalMark.EITHER));
    }

    @Override
    public double step(DisplayUnits units) {
      return Math.toRadians(1);
    }
  }

  /**
   * Plain numbers.
   *
   * @param unit word after them
   */
  record Plain(String unit) implements Measure {
    @Override
    public String unit(DisplayUnits units) {
      return unit;
    }

    @Override
    public String show(double value, DisplayUnits units) {
      return plain(value, 3);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      return number(text, unit);
    }

    @Override
    public double step(DisplayUnits units) {
      return 1;
    }
  }
}
