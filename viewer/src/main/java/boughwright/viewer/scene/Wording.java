// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.Material;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.AnchorKind;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Peak;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Numbers and names as the words beside a mark. */
public final class Wording {
  /** Length of a day [s]. */
  public static final double DAY = 86400;

  /** Length of a year [days]. */
  public static final double YEAR_DAYS = 365.25;

  private static final double NOTHING_MM = 0.5;

  /** Letters of a name in a label. */
  private static final int LONGEST_NAME = 20;

  private Wording() {}

  /** A tension [N] as text. */
  public static String newtons(double tension) {
    return number(tension, tension < 9.95 ? 1 : 0) + " N";
  }

  /** A strain [1] as text, in per cent. */
  public static String percent(double strain) {
    return number(strain * 100, 2) + " %";
  }

  /** How hard wood is bent at its hardest place, as long as a number means something. */
  public static String strain(Peak peak) {
    return peak.isBeyondWood() ? "more than it can take" : percent(peak.bendingStrain());
  }

  /** A length [m] as text, in whole millimetres. */
  public static String millimetres(double length) {
    return number(length * 1000, 0) + " mm";
  }

  /** A length [m] as text, in tenths of a millimetre. */
  public static String tenths(double length) {
    return number(length * 1000, 1) + " mm";
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

  static List<String> guy(LineTrial line, Optional<AnchorKind> kind) {
    String id = shortened(VisibleText.of(line.id()));
    String first = id + "  " + (line.slack() ? "slack" : newtons(line.tension()));
    List<String> more = new ArrayList<>();
    if (!line.slack() && line.shortening() * 1000 >= NOTHING_MM) {
      more.add("tightened " + millimetres(line.shortening()));
    }
    kind.ifPresent(k -> more.add("to " + anchor(k)));
    return more.isEmpty() ? List.of(first) : List.of(first, String.join(", ", more));
  }

  /** Words as they begin a sentence. */
  public static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A name that is short enough for a label. */
  static String shortened(String name) {
    int length = name.codePointCount(0, name.length());
    return length <= LONGEST_NAME
        ? name
        : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME - 1)).strip() + "…";
  }

  /** A gauge [m] as text, with the decimals it needs. */
  public static String gauge(double gauge) {
    double mm = Math.round(gauge * 1e5) / 100.0;
    int decimals = mm == Math.rint(mm) ? 0 : mm * 10 == Math.rint(mm * 10) ? 1 : 2;
    return number(mm, decimals) + " mm";
  }

  /** A material in a grower's words. */
  public static String material(Material material) {
    return switch (material) {
      case COPPER_ANNEALED -> "copper";
      case ALUMINIUM -> "aluminium";
      case STEEL_SOFT -> "soft steel";
      case STAINLESS -> "stainless";
      case CORD -> "cord";
    };
  }

  /** Metal and gauge of a coil, such as "copper 4 mm". */
  public static String wire(Coil coil) {
    return material(coil.metal()) + " " + gauge(coil.gauge());
  }

  static List<String> coil(Coil coil) {
    String strands = coil.strands() == 1 ? "" : coil.strands() + " side by side, ";
    String hand = coil.hand() == Hand.RIGHT ? "right-hand" : "left-hand";
    return List.of(
        wire(coil), strands + number(Math.toDegrees(coil.angleToAxis()), 0) + "°, " + hand);
  }

  /** What is done to the wood to make it bend, such as "slot 2 x 4 mm". */
  static String aid(Aid aid) {
    String across = gauge(aid.width().orElse(0)).replace(" mm", "");
    String depth = gauge(aid.depth().orElse(0));
    return switch (aid.kind()) {
      case WRAP -> "raffia";
      case SLOT -> "slot " + across + " × " + depth;
      case HOLLOW -> "hollow " + depth + ", inside";
      case RELIEF_CUT -> aid.count() == 1 ? "relief cut" : aid.count() + " relief cuts";
    };
  }

  /** What a line is tied to, in words. */
  static String anchor(AnchorKind kind) {
    return switch (kind) {
      case SCREW -> "a screw";
      case RIM -> "the rim";
      case PEG -> "a peg";
      case FRAME -> "a frame";
    };
  }

  /** A time [s] as text, in the unit a person would count it in: "3 h", "14 days", "7 months". */
  public static String time(double seconds) {
    double days = seconds / DAY;
    if (days < 1) {
      return number(seconds / 3600, 0) + " h";
    }
    if (days < 90) {
      return number(days, 0) + (Math.round(days) == 1 ? " day" : " days");
    }
    double months = days / YEAR_DAYS * 12;
    if (Math.round(months) < 24) {
      return number(months, 0) + " months";
    }
    return number(days / YEAR_DAYS, 1).replace(".0", "") + " years";
  }

  static List<String> hardest(Peak peak) {
    String from =
        peak.fromUnion().isPresent()
            ? millimetres(peak.fromUnion().getAsDouble()) + " from the union"
            : number(peak.along() * 100, 0) + " % along";
    return List.of(
        peak.isBeyondWood() ? strain(peak) : strain(peak) + "  bent hardest",
        VisibleText.of(peak.segment()) + ", " + side(peak.side()) + ", " + from);
  }

  private static String side(String side) {
    return side.equals("left") || side.equals("right") ? side + " side" : side;
  }

  private static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
