// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.Limit;
import boughwright.modeller.design.review.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What limits of a review are called on the command line and in answers, with their unit. */
final class LimitNames {
  private LimitNames() {}

  /** Such as {@code curve-turn-deg}. */
  static String option(Limit limit) {
    return limit.name().toLowerCase(Locale.ROOT).replace('_', '-') + unit(limit, "-");
  }

  /** Such as {@code curve_turn_deg}. */
  static String json(Limit limit) {
    return limit.name().toLowerCase(Locale.ROOT) + unit(limit, "_");
  }

  private static String unit(Limit limit, String before) {
    return switch (limit.quantity()) {
      case ANGLE -> before + "deg";
      case LENGTH -> before + "mm";
      case RATIO, COUNT -> "";
    };
  }

  static Optional<Limit> named(String option) {
    return Arrays.stream(Limit.values()).filter(one -> option(one).equals(option)).findFirst();
  }

  static List<String> all() {
    return Arrays.stream(Limit.values()).map(LimitNames::option).toList();
  }

  /** An SI value in the unit of its name. */
  static double shown(Limit limit, double value) {
    return value / factor(limit.quantity());
  }

  /** A value in the unit of its name, SI. */
  static double si(Limit limit, double shown) {
    return shown * factor(limit.quantity());
  }

  private static double factor(Quantity quantity) {
    return switch (quantity) {
      case ANGLE -> Math.toRadians(1);
      case LENGTH -> 1e-3;
      case RATIO, COUNT -> 1;
    };
  }
}
