// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.units.DecimalMark;
import boughwright.modeller.units.DecimalText;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.modeller.units.UnreadableException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads what a person typed under a heading. Every method refuses in one line what it cannot read.
 *
 * @param heading the name of what was typed, for the refusal
 * @param text what was typed
 */
public record Typed(String heading, String text) {
  private static final double RIGHT_ANGLE = 90;
  private static final double FULL_TURN = 360;
  private static final double PERCENT = 100;

  /** A length that is more than nothing [m]. */
  public double length(LengthUnit unit) throws InputException {
    double metres = anyLength(unit);
    if (!(metres > 0)) {
      throw refusal("not-positive", shown() + " is no size", "Type a length of more than 0");
    }
    return metres;
  }

  /** A length of 0 or more [m]. */
  public double thickness(LengthUnit unit) throws InputException {
    double metres = anyLength(unit);
    if (metres < 0) {
      throw refusal("negative", shown() + " is less than nothing", "Type 0 or more");
    }
    return metres;
  }

  /** A length to either side [m]. */
  public double anyLength(LengthUnit unit) throws InputException {
    try {
      return new DisplayUnits(unit, ForceUnit.NEWTON).readLength(text);
    } catch (UnreadableException e) {
      throw new InputException(e.at(Place.of(heading)));
    }
  }

  /** An azimuth, from 0 to 2 pi [rad]. */
  public double azimuth() throws InputException {
    double degrees = degrees();
    if (Math.abs(degrees) > FULL_TURN) {
      throw refusal(
          "turns-over", shown() + " is more than once round", "Type degrees from 0 to 360");
    }
    return Math.toRadians((degrees + FULL_TURN) % FULL_TURN);
  }

  /** An elevation, from -pi/2 to pi/2 [rad]. */
  public double elevation() throws InputException {
    double degrees = degrees();
    if (Math.abs(degrees) > RIGHT_ANGLE) {
      throw refusal(
          "past-plumb",
          shown() + " goes past plumb",
          "Type degrees from -90 (straight down) to 90 (straight up)");
    }
    return Math.toRadians(degrees);
  }

  private double degrees() throws InputException {
    try {
      return Math.toDegrees(DisplayUnits.USUAL.readAngle(text));
    } catch (UnreadableException e) {
      throw new InputException(e.at(Place.of(heading)));
    }
  }

  /** A place along a segment, from 0 to 1; a number with a percent sign counts in hundredths. */
  public double along() throws InputException {
    boolean percent = text.strip().endsWith("%");
    String number = percent ? text.strip().substring(0, text.strip().length() - 1) : text;
    double value;
    try {
      value = DecimalText.read(number, DecimalMark.EITHER).doubleValue();
    } catch (UnreadableException e) {
      throw new InputException(e.at(Place.of(heading)));
    }
    double along = percent ? value / PERCENT : value;
    if (!(along >= 0 && along <= 1)) {
      throw refusal(
          "not-along",
          shown() + " is not on the segment",
          "Type a fraction from 0 (its start) to 1 (its end), or percent");
    }
    return along;
  }

  /** A mass [kg]. */
  public double mass() throws InputException {
    try {
      double mass = DecimalText.read(text, DecimalMark.EITHER).doubleValue();
      if (mass > 0) {
        return mass;
      }
    } catch (UnreadableException e) {
      throw new InputException(e.at(Place.of(heading)));
    }
    throw refusal("not-positive", shown() + " is no weight", "Type kilograms, more than 0");
  }

  /** A day; empty where nothing was typed. */
  public Optional<LocalDate> day() throws InputException {
    if (text.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text.strip()));
    } catch (DateTimeParseException e) {
      throw refusal("no-day", shown() + " is no day", "Type year-month-day, such as 2026-03-02");
    }
  }

  /** Yes, no, or empty where the person does not say. */
  public Optional<Boolean> yesNo() throws InputException {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "" -> Optional.empty();
      case "yes", "y", "true", "1" -> Optional.of(true);
      case "no", "n", "false", "0" -> Optional.of(false);
      default ->
          throw refusal(
              "not-yes-or-no", shown() + " is neither yes nor no", "Type yes or no, or nothing");
    };
  }

  /** One of some constants, by its word or the beginning of it. */
  public <E extends Enum<E>> E oneOf(E[] all) throws InputException {
    String word = text.strip().toLowerCase(Locale.ROOT);
    E begun = null;
    StringBuilder words = new StringBuilder();
    for (E one : all) {
      String name = word(one);
      if (name.equals(word)) {
        return one;
      }
      if (begun == null && !word.isEmpty() && name.startsWith(word)) {
        begun = one;
      }
      words.append(words.isEmpty() ? "" : ", ").append(name);
    }
    if (begun == null) {
      throw refusal("unknown-word", shown() + " is none of them", "Type one of " + words);
    }
    return begun;
  }

  /** The word for a constant. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** A refusal of what was typed. */
  public InputException refusal(String kind, String found, String remedy) {
    return new InputException(Problem.fault(Place.of(heading), kind, found, remedy));
  }

  private String shown() {
    int most = 30;
    String plain = text.strip();
    return '"' + (plain.length() > most ? plain.substring(0, most) + "..." : plain) + '"';
  }
}
