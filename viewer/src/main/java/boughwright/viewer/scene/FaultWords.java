// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.review.FaultKind;
import boughwright.modeller.design.review.Limit;
import boughwright.modeller.design.review.Measured;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.VisibleText;
import java.util.Locale;

/** Faults of structure and their measures in a grower's words. */
public final class FaultWords {
  /** Shares below this are told with one more digit [1]. */
  private static final double SMALL = 0.05;

  /** Ratios from here on are told with one digit less [1]. */
  private static final double LARGE = 9.995;

  private FaultWords() {}

  /** What it is called. */
  public static String name(FaultKind kind) {
    return switch (kind) {
      case BAR_BRANCHES -> "bar branches";
      case WHORL -> "whorl of branches";
      case SWELLING -> "swelling where branches leave";
      case CROSSING -> "crossing branches";
      case PARALLEL -> "parallel branches";
      case INSIDE_CURVE -> "branch inside a curve";
      case STRAIGHT -> "straight stretch of trunk";
      case REVERSE_TAPER -> "reverse taper";
      case TOO_THICK -> "branch too thick for its place";
      case TOO_LOW -> "branch too low";
      case COMPETING_LEADER -> "competing leader";
      case BARE_STRETCH -> "long bare stretch";
      case BRANCH_AT_VIEWER -> "branch at the viewer";
      case APEX_AWAY -> "apex leans away";
    };
  }

  /** What happens if nothing is done. */
  public static String ifKept(FaultKind kind) {
    return switch (kind) {
      case BAR_BRANCHES -> "the trunk swells where both leave, and the eye stops there";
      case WHORL -> "the trunk swells there, and the wood above gets thinner than it should";
      case SWELLING -> "it grows on as long as the branches do";
      case CROSSING -> "bark rubs on bark, and one shades the other";
      case PARALLEL -> "the upper one shades the lower one";
      case INSIDE_CURVE -> "it fills the hollow of the curve";
      case STRAIGHT -> "the trunk does not move there; branches in front can hide some of it";
      case REVERSE_TAPER -> "it stays; only wood laid on below mends it";
      case TOO_THICK -> "it draws the sap and outgrows the trunk above it";
      case TOO_LOW -> "it thickens the base, and pulls the eye down";
      case COMPETING_LEADER -> "both grow on as tops, which suits a twin trunk";
      case BARE_STRETCH -> "it stays bare: old wood there buds seldom";
      case BRANCH_AT_VIEWER -> "it hides the trunk, and looks short from the front";
      case APEX_AWAY -> "the tree seems to step back from the viewer";
    };
  }

  /** What was measured, such as "times the trunk's caliper at the union". */
  public static String what(Limit limit) {
    return switch (limit) {
      case BAR_SPACING -> "of the trunk's caliper apart along it";
      case BAR_OPPOSITE -> "between them round the trunk";
      case WHORL_COUNT -> "branches from one height";
      case WHORL_SPACING -> "of the trunk's caliper from the lowest to the highest";
      case SWELLING -> "times the caliper between both sides";
      case CROSSING_GAP -> "of their mean caliper from bark to bark";
      case PARALLEL_SPACING -> "of the shorter one's length apart";
      case PARALLEL_ANGLE -> "between the two ways they go";
      case CURVE_SIDE -> "off the inside of the curve";
      case CURVE_TURN -> "turn of the trunk there";
      case STRAIGHT_LENGTH -> "of the trunk's length";
      case STRAIGHT_CALIPERS, BARE_CALIPERS -> "times the caliper there long";
      case STRAIGHT_BOW -> "of its length out of straight";
      case REVERSE_TAPER, REVERSE_BRANCH -> "times the caliper further in";
      case BRANCH_CALIPER, CODOMINANT -> "times the trunk's caliper at the union";
      case FIRST_BRANCH, VIEWER_HEIGHT -> "of the tree's height";
      case LEADER_CALIPER, LEADER_THICK -> "times the caliper of the trunk that goes on";
      case LEADER_HEIGHT -> "of the apex's height at its tip";
      case LEADER_ANGLE -> "off upright";
      case BARE_TRUNK, BARE_BASE -> "of the trunk's length";
      case BARE_BRANCH -> "of the branch's length";
      case VIEWER_ANGLE -> "off the line of sight";
      case APEX_AWAY -> "away from the viewer";
      default -> limit.note();
    };
  }

  /** A value with its unit. */
  public static String value(Limit limit, double value) {
    return switch (limit.quantity()) {
      case RATIO -> fixed(value, value < SMALL ? 3 : value < LARGE ? 2 : 1);
      case ANGLE -> fixed(Math.toDegrees(value), 0) + "°";
      case LENGTH -> fixed(1000 * value, 1) + " mm";
      case COUNT -> fixed(value, 0);
    };
  }

  /** Value and measure, such as "0.62 times the trunk's caliper at the union". */
  public static String measured(Measured measured) {
    return value(measured.limit(), measured.value()) + " " + what(measured.limit());
  }

  /** The measure beside its limit, and where that is from. */
  public static String told(Measured measured) {
    return measured(measured) + ": " + limit(measured) + " (" + origin(measured.limit()) + ").";
  }

  /** Such as "t3, 40 % along". */
  public static String place(Spot spot) {
    String segment = VisibleText.of(spot.segment());
    long percent = Math.round(100 * spot.along());
    if (percent == 0) {
      return "the start of " + segment;
    }
    return percent == 100 ? "the end of " + segment : segment + ", " + percent + " % along";
  }

  /** The limit beside it, such as "a fault from 0.50 on". */
  public static String limit(Measured measured) {
    String bound = value(measured.limit(), measured.bound());
    return measured.limit().isFaultBelow() ? "a fault up to " + bound : "a fault from " + bound;
  }

  /** Where a limit is from. */
  public static String origin(Limit limit) {
    return switch (limit.origin()) {
      case TRADE -> "common practice, no source";
      case CHOSEN -> "our choice, no source";
      case PUBLISHED -> limit.note();
    };
  }

  private static String fixed(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
