// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.problem.Place;
import boughwright.modeller.units.DecimalMark;
import boughwright.modeller.units.DecimalText;
import boughwright.modeller.units.LengthText;
import boughwright.modeller.units.LengthUnit;
import boughwright.modeller.units.UnreadableException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the values of options; notes a fault for each that cannot be used. */
final class OptionValues {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  /** A vector shorter than this points nowhere. */
  private static final double NO_DIRECTION = 1e-9;

  private final Faults faults;

  OptionValues(Faults faults) {
    this.faults = faults;
  }

  /**
   * What an option is called and which values it takes.
   *
   * @param option name of the option
   * @param low smallest value, in the unit of the option
   * @param high largest value
   * @param what what the person should give, after "Give"
   */
  record Range(String option, double low, double high, String what) {}

  /** A length [m] from millimetres, or from the unit beside the number. */
  OptionalDouble length(String text, Range range) {
    try {
      double metres = LengthText.read(text, LengthUnit.MILLIMETRE, DecimalMark.EITHER).metres();
      return within(LengthUnit.MILLIMETRE.fromMetres(metres), range, " mm")
          ? OptionalDouble.of(metres)
          : OptionalDouble.empty();
    } catch (UnreadableException e) {
      faults.add(e.at(Place.of(range.option)));
      return OptionalDouble.empty();
    }
  }

  /** A plain number in the unit of its option. */
  OptionalDouble number(String text, Range range) {
    try {
      double value = DecimalText.read(text, DecimalMark.EITHER).doubleValue();
      return within(value, range, "") ? OptionalDouble.of(value) : OptionalDouble.empty();
    } catch (UnreadableException e) {
      faults.add(e.at(Place.of(range.option)));
      return OptionalDouble.empty();
    }
  }

  /** A whole number; what is taken without one, or in place of one that cannot be used. */
  long whole(String text, Range range, long otherwise) {
    if (text == null) {
      return otherwise;
    }
    OptionalDouble value = number(text, range);
    if (value.isPresent() && value.getAsDouble() != Math.rint(value.getAsDouble())) {
      faults.add(
          range.option,
          "not-whole",
          UsageFaults.quoted(text) + " is no whole number",
          "Give " + range.what);
      return otherwise;
    }
    return value.isPresent() ? (long) value.getAsDouble() : otherwise;
  }

  /** Three numbers with commas between them, in the unit of their option. */
  Optional<double[]> three(String text, Range range) {
    String[] parts = text.strip().split("\\s*[,;]\\s*", -1);
    double[] xyz = new double[3];
    for (int k = 0; k < 3 && parts.length == 3; k++) {
      OptionalDouble one = number(parts[k], range);
      if (one.isEmpty()) {
        return Optional.empty();
      }
      xyz[k] = one.getAsDouble();
    }
    if (parts.length != 3) {
      faults.add(
          range.option,
          "not-three",
          UsageFaults.quoted(text) + " is not three numbers",
          "Give " + range.what + " with decimal points, such as 120,-5,80");
      return Optional.empty();
    }
    return Optional.of(xyz);
  }

  /** A day; empty, with its fault noted, if it is none or no day of a person at a bench. */
  Optional<LocalDate> day(String text, String option) {
    try {
      LocalDate day = LocalDate.parse(text.strip());
      if (day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR) {
        return Optional.of(day);
      }
      noDay(text, option, " lies in no year a tree is bent in");
    } catch (DateTimeParseException e) {
      noDay(text, option, " is no date");
    }
    return Optional.empty();
  }

  private void noDay(String text, String option, String found) {
    faults.add(
        option,
        "no-date",
        UsageFaults.quoted(text) + found,
        "Give year, month and day, such as 2026-03-15");
  }

  /** Whether an option that is needed is given; notes a fault where not. */
  boolean isGiven(String option, String text, String remedy) {
    if (text == null) {
      faults.add(option, "no-value", "is needed and not given", remedy);
    }
    return text != null;
  }

  /** A direction as x,y,z of any length. */
  Optional<Direction3> direction(String text, String option) {
    Optional<double[]> xyz = three(text, new Range(option, -1e6, 1e6, "x,y,z"));
    if (xyz.isPresent() && length(xyz.get()) < NO_DIRECTION) {
      faults.add(
          option,
          "no-direction",
          UsageFaults.quoted(text) + " points nowhere",
          "Give x,y,z with decimal points, such as 0,0,-1 for straight down");
      return Optional.empty();
    }
    return xyz.map(v -> Direction3.of(v[0], v[1], v[2]));
  }

  private static double length(double[] xyz) {
    return Math.hypot(xyz[0], Math.hypot(xyz[1], xyz[2]));
  }

  private boolean within(double value, Range range, String unit) {
    if (value >= range.low && value <= range.high) {
      return true;
    }
    faults.add(
        range.option,
        "out-of-range",
        Shown.plain(value)
            + unit
            + " is not between "
            + Shown.plain(range.low)
            + " and "
            + Shown.plain(range.high)
            + unit,
        "Give " + range.what);
    return false;
  }
}
