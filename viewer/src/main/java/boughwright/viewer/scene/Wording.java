// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.problem.VisibleText;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Peak;
import java.util.List;
import java.util.Locale;

/** Numbers and names as the words beside a mark. */
public final class Wording {
  private static final double NOTHING_MM = 0.5;

  private Wording() {}

  /** A tension [N] as text. */
  public static String newtons(double tension) {
    return number(tension, tension < 9.95 ? 1 : 0) + " N";
  }

  /** A strain [1] as text, in per cent. */
  public static String percent(double strain) {
    return number(strain * 100, 2) + " %";
  }

  /** A length [m] as text, in whole millimetres. */
  public static String millimetres(double length) {
    return number(length * 1000, 0) + " mm";
  }

  /** A mass [kg] as text. */
  public static String kilograms(double mass) {
    return mass < 1 ? number(mass * 1000, 0) + " g" : number(mass, 2) + " kg";
  }

  /** An azimuth [rad] as text, 0 to 359 degrees. */
  public static String azimuth(double azimuth) {
    long degrees = Math.round(Math.toDegrees(azimuth));
    return Math.floorMod(degrees, 360L) + "°";
  }

  /**
   * Where a point lies beside the root base, in words, seen from the front.
   *
   * @param right to the right [m]
   * @param behind behind [m]
   */
  public static String beside(double right, double behind) {
    String across = side(right, "right", "left");
    String along = side(behind, "behind", "in front of");
    if (across.isEmpty() && along.isEmpty()) {
      return "straight over the root base";
    }
    if (along.isEmpty()) {
      return across + " of the root base";
    }
    return across.isEmpty() ? along + " the root base" : across + ", " + along + " the root base";
  }

  /** A signed length [m] with the word for its side; empty when it is nothing. */
  static String side(double length, String positive, String negative) {
    if (Math.abs(length * 1000) < NOTHING_MM) {
      return "";
    }
    return millimetres(Math.abs(length)) + " " + (length > 0 ? positive : negative);
  }

  static List<String> guy(LineTrial line) {
    String id = VisibleText.of(line.id());
    if (line.slack()) {
      return List.of(id + "  slack");
    }
    String first = id + "  " + newtons(line.tension());
    return line.shortening() * 1000 >= NOTHING_MM
        ? List.of(first, "tightened " + millimetres(line.shortening()))
        : List.of(first);
  }

  static List<String> hardest(Peak peak) {
    String from =
        peak.fromUnion().isPresent()
            ? millimetres(peak.fromUnion().getAsDouble()) + " from the union"
            : number(peak.along() * 100, 0) + " % along";
    return List.of(
        percent(peak.bendingStrain()) + "  bent hardest",
        VisibleText.of(peak.segment()) + ", " + side(peak.side()) + ", " + from);
  }

  private static String side(String side) {
    return side.equals("left") || side.equals("right") ? side + " side" : side;
  }

  private static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
