// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The units a person wants to see and type, everywhere at once.
 *
 * <p>What is shown is rounded to what matters at a bench; what is put into a field to be changed
 * ({@code ...ToEdit}) reads back as the very same value where a decimal of a few digits can. What
 * is typed may have its own unit beside it, a decimal comma or point, and in inches a fraction.
 *
 * @param length of calipers, lengths and movements: millimetres or inches
 * @param force of pulls
 */
public record DisplayUnits(LengthUnit length, ForceUnit force) {
  private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?)";

  /** One quantity or a range of it, such as {@code 12 mm} or {@code 29-39 N}. */
  private static final Pattern TOLD =
      Pattern.compile(
          "(?<![\\w.])(?:" + NUMBER + "( to |-|\u2013))?" + NUMBER + " (mm|N)(?![\\w\u00b7])");

  /** Millimetres and newtons. */
  public static final DisplayUnits USUAL =
      new DisplayUnits(LengthUnit.MILLIMETRE, ForceUnit.NEWTON);

  /** Inches are shown to hundredths where millimetres are shown to tenths. */
  private static final Rounding MILLIMETRES = new Rounding(2, 2, 1, 1, 0);

  private static final Rounding INCHES = new Rounding(3, 2, 2, 2, 1);
  private static final Rounding COARSE = new Rounding(4, 3, 3, 2, 2);
  private static final Rounding NEWTONS = new Rounding(2, 2, 1, 0, 0);
  private static final Rounding BALANCE = new Rounding(2, 2, 1, 1, 0);
  private static final Rounding MOMENTS = new Rounding(3, 2, 1, 1, 0);

  /** Most decimals of a length that is put into a field to be changed, in millimetres. */
  private static final int DECIMALS_TO_EDIT = 4;

  public DisplayUnits {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(force, "force");
  }

  /** A length [m] as {@code 12.3 mm} or {@code 0.48 in}. */
  public String length(double metres) {
    return lengthNumber(metres) + " " + length.symbol();
  }

  /** The number of {@link #length}, to stand under a heading that names the unit. */
  public String lengthNumber(double metres) {
    Rounding rounding =
        switch (length) {
          case MILLIMETRE -> MILLIMETRES;
          case INCH -> INCHES;
          case CENTIMETRE, METRE -> COARSE;
        };
    return rounding.of(length.fromMetres(metres));
  }

  /** A length [m] to stand in a field to be changed, with its unit and all its digits. */
  public String lengthToEdit(double metres) {
    return Rounding.plain(length.fromMetres(metres), DECIMALS_TO_EDIT) + " " + length.symbol();
  }

  /** A force [N] as {@code 24 N}, {@code 2.4 kgf} or {@code 5.4 lbf}. */
  public String force(double newtons) {
    return forceNumber(newtons) + " " + force.symbol();
  }

  /** The number of {@link #force}, to stand under a heading that names the unit. */
  public String forceNumber(double newtons) {
    return (force == ForceUnit.NEWTON ? NEWTONS : BALANCE).of(force.fromNewtons(newtons));
  }

  /** A force [N] to stand in a field to be changed, with its unit and all its digits. */
  public String forceToEdit(double newtons) {
    return Rounding.plain(force.fromNewtons(newtons), DECIMALS_TO_EDIT) + " " + force.symbol();
  }

  /** A moment [N m] as {@code 3.4 N·m}, {@code 34.7 kgf·cm} or {@code 30.1 lbf·in}. */
  public String moment(double newtonMetres) {
    LengthUnit arm =
        switch (force) {
          case NEWTON -> LengthUnit.METRE;
          case KILOGRAM_FORCE -> LengthUnit.CENTIMETRE;
          case POUND_FORCE -> LengthUnit.INCH;
        };
    double value = arm.fromMetres(force.fromNewtons(newtonMetres));
    return MOMENTS.of(value) + " " + force.symbol() + "\u00B7" + arm.symbol();
  }

  /** A mass [kg] as {@code 0.20 kg}, or in pounds for who pulls in pounds. */
  public String mass(double kilograms) {
    boolean pounds = force == ForceUnit.POUND_FORCE;
    double value = pounds ? Factor.POUND.fromSi(kilograms) : kilograms;
    return BALANCE.of(value) + (pounds ? " lb" : " kg");
  }

  /** An angle [rad] as {@code 35°} or {@code 12.5°}. */
  public String angle(double radians) {
    return Rounding.plain(Math.toDegrees(radians), 1) + "\u00B0";
  }

  /** An angle [rad] to stand in a field to be changed. */
  public String angleToEdit(double radians) {
    return Rounding.plain(Math.toDegrees(radians), DECIMALS_TO_EDIT) + "\u00B0";
  }

  /**
   * A sentence that tells lengths in millimetres and forces in newtons, told in these units.
   *
   * @param sentence words such as {@code a kink, 153 mm from the union}
   */
  public String inWords(String sentence) {
    if (equals(USUAL)) {
      return sentence;
    }
    return TOLD.matcher(sentence)
        .replaceAll(
            told -> {
              boolean isLength = told.group(4).equals("mm");
              String words = number(isLength, told.group(3)) + " " + symbol(isLength);
              if (told.group(1) != null) {
                words = number(isLength, told.group(1)) + told.group(2) + words;
              }
              return Matcher.quoteReplacement(words);
            });
  }

  private String number(boolean isLength, String told) {
    double value = Double.parseDouble(told);
    return isLength ? lengthNumber(LengthUnit.MILLIMETRE.toMetres(value)) : forceNumber(value);
  }

  private String symbol(boolean isLength) {
    return isLength ? length.symbol() : force.symbol();
  }

  /**
   * A length as typed, such as {@code 12}, {@code 3,5 cm}, {@code 1 1/2 in}, {@code 1½ in} or
   * {@code 3/8"} [m].
   *
   * @throws UnreadableException if it is no length; whether it may be 0 or less is the caller's
   */
  public double readLength(String text) throws UnreadableException {
    Typed typed = Typed.of(text, length.symbol());
    LengthUnit unit =
        LengthUnit.named(typed.unit())
            .orElseThrow(() -> typed.unknownUnit("mm, cm, m or in", "length"));
    return unit.toMetres(typed.number(unit == LengthUnit.INCH));
  }

  /**
   * A force as typed, such as {@code 24}, {@code 24 N}, {@code 2,4 kgf} or {@code 1 lb} [N].
   *
   * @throws UnreadableException if it is no force; whether it may be 0 or less is the caller's
   */
  public double readForce(String text) throws UnreadableException {
    Typed typed = Typed.of(text, force.symbol());
    BigDecimal number = typed.number(false);
    return ForceUnit.named(typed.unit())
        .orElseThrow(() -> typed.unknownUnit("N, kgf or lbf", "force"))
        .toNewtons(number);
  }

  /**
   * A mass as typed, such as {@code 0.2}, {@code 200 g} or {@code 1/2 lb} [kg].
   *
   * @throws UnreadableException if it is no mass; whether it may be 0 or less is the caller's
   */
  public double readMass(String text) throws UnreadableException {
    Typed typed = Typed.of(text, force == ForceUnit.POUND_FORCE ? "lb" : "kg");
    Factor factor =
        switch (typed.unit()) {
          case "kg" -> Factor.of("1");
          case "g" -> Factor.of("0.001");
          case "lb", "lbs" -> Factor.POUND;
          default -> throw typed.unknownUnit("kg, g or lb", "mass");
        };
    return factor.toSi(typed.number(false));
  }

  /**
   * An angle in degrees as typed, such as {@code 35}, {@code -12,5°} or {@code 35 deg} [rad].
   *
   * @throws UnreadableException if it is no angle
   */
  public double readAngle(String text) throws UnreadableException {
    Typed typed = Typed.of(text, "\u00B0");
    if (!typed.unit().equals("\u00B0") && !typed.unit().startsWith("deg")) {
      throw typed.unknownUnit("\u00B0 or deg", "angle");
    }
    return Math.toRadians(typed.number(false).doubleValue());
  }
}
