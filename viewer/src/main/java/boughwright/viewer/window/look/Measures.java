// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import boughwright.modeller.units.DecimalMark;
import boughwright.modeller.units.DecimalText;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.modeller.units.UnreadableException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** The sorts of quantity there are. */
final class Measures {
  private static final int DECIMALS = 4;

  private Measures() {}

  private static String without(String unit, String shown) {
    return shown.endsWith(unit)
        ? shown.substring(0, shown.length() - unit.length()).strip()
        : shown;
  }

  /** Lengths. */
  static final class Length implements Measure {
    @Override
    public String unit(DisplayUnits units) {
      return units.length().symbol();
    }

    @Override
    public String show(double value, DisplayUnits units) {
      return without(unit(units), units.lengthToEdit(value));
    }

    @Override
    public String words(double value, DisplayUnits units) {
      return units.length(value);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      return units.readLength(text);
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
      return without(unit(units), units.forceToEdit(value));
    }

    @Override
    public String words(double value, DisplayUnits units) {
      return units.force(value);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      return units.readForce(text);
    }

    @Override
    public double step(DisplayUnits units) {
      return units.force().toNewtons(units.force() == ForceUnit.NEWTON ? 1 : 0.1);
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
      return without("\u00B0", units.angleToEdit(value));
    }

    @Override
    public String words(double value, DisplayUnits units) {
      return units.angle(value);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      return units.readAngle(text);
    }

    @Override
    public double step(DisplayUnits units) {
      return Math.toRadians(1);
    }
  }

  /** Masses, in the unit that goes with forces. */
  static final class Mass implements Measure {
    @Override
    public String unit(DisplayUnits units) {
      String shown = units.mass(1);
      return shown.substring(shown.lastIndexOf(' ') + 1);
    }

    @Override
    public String show(double value, DisplayUnits units) {
      return without(unit(units), units.mass(value));
    }

    @Override
    public String words(double value, DisplayUnits units) {
      return units.mass(value);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      return units.readMass(text);
    }

    @Override
    public double step(DisplayUnits units) {
      return 0.1;
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
      BigDecimal shown =
          new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
      return (shown.signum() == 0 ? BigDecimal.ZERO : shown).toPlainString();
    }

    @Override
    public String words(double value, DisplayUnits units) {
      return show(value, units) + (unit.isEmpty() ? "" : " " + unit);
    }

    @Override
    public double read(String text, DisplayUnits units) throws UnreadableException {
      String typed = text.strip();
      String low = typed.toLowerCase(Locale.ROOT);
      boolean named = !unit.isEmpty() && low.endsWith(unit.toLowerCase(Locale.ROOT));
      String number = named ? typed.substring(0, typed.length() - unit.length()) : typed;
      return DecimalText.read(number, DecimalMark.EITHER).doubleValue();
    }

    @Override
    public double step(DisplayUnits units) {
      return 1;
    }
  }
}
