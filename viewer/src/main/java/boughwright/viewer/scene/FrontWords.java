// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.front.FrontReason;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.TreeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Fronts, their measures and what tells them apart, in words. */
public final class FrontWords {
  /** Less than this is no tilt worth a word [degrees]. */
  private static final double NO_TILT = 0.5;

  private FrontWords() {}

  /** What a measure is called. */
  public static String name(FrontMeasure measure) {
    return switch (measure) {
      case TRUNK_MOVEMENT -> "trunk movement";
      case TAPER -> "taper";
      case ROOT_BASE_WIDTH -> "root base";
      case WOUNDS -> "wounds";
      case BRANCHES_AT_VIEWER -> "branches at viewer";
      case APEX_LEAN -> "lean of the apex";
      case BALANCE_SIDES -> "left and right";
      case BALANCE_OVER_BASE -> "mass over base";
      case DEPTH -> "depth";
      case FIRST_BRANCH -> "first branch";
      case NEGATIVE_SPACE -> "open space";
      case TRUNK_BULGE -> "bulge of the trunk";
      case DEADWOOD -> "deadwood";
    };
  }

  /** The one word by which a measure is given on a command line. */
  public static String key(FrontMeasure measure) {
    return switch (measure) {
      case TRUNK_MOVEMENT -> "movement";
      case TAPER -> "taper";
      case ROOT_BASE_WIDTH -> "root-base";
      case WOUNDS -> "wounds";
      case BRANCHES_AT_VIEWER -> "at-viewer";
      case APEX_LEAN -> "apex-lean";
      case BALANCE_SIDES -> "sides";
      case BALANCE_OVER_BASE -> "over-base";
      case DEPTH -> "depth";
      case FIRST_BRANCH -> "first-branch";
      case NEGATIVE_SPACE -> "space";
      case TRUNK_BULGE -> "bulge";
      case DEADWOOD -> "deadwood";
    };
  }

  /** What a style is called, as a word on a command line too. */
  public static String style(TreeStyle style) {
    return style.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A value of a measure, with what it is a part of. */
  public static String value(FrontMeasure measure, double value) {
    return switch (measure) {
      case TRUNK_MOVEMENT -> percent(value, 1) + " of its length to the sides";
      case TAPER -> percent(value, 0) + " of the base caliper lost";
      case ROOT_BASE_WIDTH -> fixed(value, 2) + " times the base caliper";
      case WOUNDS, DEADWOOD -> percent(value, 1) + " of the trunk's area";
      case BRANCHES_AT_VIEWER -> percent(value, 0) + " of the lower branches";
      case APEX_LEAN -> degrees(value, "toward you", "away");
      case BALANCE_SIDES ->
          percent(Math.abs(value), 0) + side(value, " more to the right", " more to the left");
      case BALANCE_OVER_BASE -> percent(value, 0) + " of the tree's size off the base";
      case DEPTH -> percent(value, 0) + " behind the trunk";
      case FIRST_BRANCH -> "at " + fixed(value, 2) + " of the height";
      case NEGATIVE_SPACE -> percent(value, 0) + " of the outline";
      case TRUNK_BULGE ->
          percent(Math.abs(value), 1) + " of its length" + side(value, " at you", " away");
    };
  }

  /** A value of a measure as short as it goes, for a row of numbers. */
  public static String brief(FrontMeasure measure, double value) {
    return switch (measure) {
      case ROOT_BASE_WIDTH, FIRST_BRANCH -> fixed(value, 2);
      case APEX_LEAN -> signed(Math.toDegrees(value), 0) + "°";
      case TAPER, BRANCHES_AT_VIEWER, BALANCE_OVER_BASE, DEPTH, NEGATIVE_SPACE -> percent(value, 0);
      case BALANCE_SIDES -> signed(100 * value, 0) + " %";
      case TRUNK_BULGE -> signed(100 * value, 1) + " %";
      case TRUNK_MOVEMENT, WOUNDS, DEADWOOD -> percent(value, 1);
    };
  }

  /** What tells a front from the others, with its value and theirs. */
  public static String reason(FrontReason reason) {
    FrontMeasure measure = reason.measure();
    String low = brief(measure, reason.others().low());
    String high = brief(measure, reason.others().high());
    String others = low.equals(high) ? low : low.replace(" %", "") + " to " + high;
    return said(reason) + " (" + brief(measure, reason.value()) + ", the others " + others + ")";
  }

  private static String said(FrontReason reason) {
    boolean more = reason.more();
    double value = reason.value();
    return switch (reason.measure()) {
      case TRUNK_MOVEMENT -> (more ? "more" : "less") + " of the trunk's movement is seen";
      case TAPER -> (more ? "more" : "less") + " of the taper is seen";
      case ROOT_BASE_WIDTH -> "the root base looks " + (more ? "wider" : "narrower");
      case WOUNDS -> (more ? "more" : "less") + " of the wounds is seen";
      case BRANCHES_AT_VIEWER -> (more ? "more" : "less") + " branch wood points at you";
      case APEX_LEAN ->
          Math.abs(Math.toDegrees(value)) < NO_TILT
              ? "the apex leans neither toward you nor away"
              : "the apex leans " + side(value, "toward you", "away");
      case BALANCE_SIDES ->
          reason.isFor()
              ? "left and right weigh more alike"
              : "one side weighs more" + side(value, ", the right", ", the left");
      case BALANCE_OVER_BASE ->
          "the mass stands " + (more ? "further off" : "nearer over") + " the root base";
      case DEPTH -> (more ? "more" : "less") + " stands behind the trunk";
      case FIRST_BRANCH -> "the first branch comes " + (more ? "higher" : "lower");
      case NEGATIVE_SPACE -> (more ? "more" : "less") + " open space";
      case TRUNK_BULGE ->
          "the trunk " + side(value, more ? "bulges at you" : "bulges less at you", "lies back");
      case DEADWOOD -> (more ? "more" : "less") + " of the deadwood is seen";
    };
  }

  /** Azimuth and tilt of a front. */
  public static String pose(FrontPose pose) {
    return "azimuth " + Wording.azimuth(pose.azimuth()) + ", " + tilt(pose);
  }

  /** How the tree is tilted, as the viewer sees it. */
  public static String tilt(FrontPose pose) {
    List<String> parts = new ArrayList<>();
    double right = Math.toDegrees(pose.tiltRight());
    double toward = Math.toDegrees(pose.tiltToward());
    if (Math.abs(right) >= NO_TILT) {
      parts.add(fixed(Math.abs(right), 0) + "° to the " + (right > 0 ? "right" : "left"));
    }
    if (Math.abs(toward) >= NO_TILT) {
      parts.add(fixed(Math.abs(toward), 0) + "° " + (toward > 0 ? "toward you" : "away"));
    }
    return parts.isEmpty() ? "not tilted" : "tilted " + String.join(" and ", parts);
  }

  /** A score as people compare it, of 100. */
  public static String score(double score) {
    return fixed(100 * score, 1);
  }

  private static String degrees(double value, String positive, String negative) {
    String angle = fixed(Math.abs(Math.toDegrees(value)), 0);
    return angle.equals("0") ? "0°" : angle + "° " + (value > 0 ? positive : negative);
  }

  private static String side(double value, String positive, String negative) {
    return value >= 0 ? positive : negative;
  }

  private static String percent(double value, int decimals) {
    return fixed(100 * value, decimals) + " %";
  }

  private static String signed(double value, int decimals) {
    String text = fixed(Math.abs(value), decimals);
    boolean nothing = text.chars().noneMatch(c -> c >= '1' && c <= '9');
    return (nothing ? "" : value > 0 ? "+" : "\u2212") + text;
  }

  private static String fixed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.startsWith("-") && text.chars().noneMatch(c -> c >= '1' && c <= '9')
        ? text.substring(1)
        : text;
  }
}
