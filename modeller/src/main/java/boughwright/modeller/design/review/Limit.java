// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import java.util.EnumSet;
import java.util.Set;

/** The limits a review judges by, each with its usual value and where that comes from. */
public enum Limit {
  TWIG_CALIPER(Quantity.LENGTH, 3e-3, Origin.CHOSEN, "thinner shoots are pinched, not judged"),
  BAR_SPACING(Quantity.RATIO, 0.5, Origin.CHOSEN, "along the trunk, over its caliper"),
  BAR_OPPOSITE(Quantity.ANGLE, Math.toRadians(135), Origin.CHOSEN, "round the trunk, at least"),
  BAR_ALIKE(Quantity.RATIO, 1.0 / 3, Origin.CHOSEN, "thinner branch over the thicker, at least"),
  WHORL_SPACING(Quantity.RATIO, 0.6, Origin.CHOSEN, "from the lowest to the highest, over caliper"),
  WHORL_COUNT(Quantity.COUNT, 3, Origin.TRADE, "branches from one height, at least"),
  SWELLING(
      Quantity.RATIO, 1.08, Origin.CHOSEN, "caliper at the branches over that between both sides"),
  CROSSING_GAP(Quantity.RATIO, 0.5, Origin.CHOSEN, "from bark to bark, over the mean caliper"),
  CROSSING_ANGLE(Quantity.ANGLE, Math.toRadians(30), Origin.CHOSEN, "between the shoots, at least"),
  PARALLEL_ANGLE(
      Quantity.ANGLE, Math.toRadians(20), Origin.CHOSEN, "between the branches, at most"),
  PARALLEL_SPACING(Quantity.RATIO, 0.5, Origin.CHOSEN, "apart, over the length of the shorter"),
  CURVE_TURN(
      Quantity.ANGLE, Math.toRadians(20), Origin.CHOSEN, "turn that makes a curve, at least"),
  CURVE_SIDE(
      Quantity.ANGLE, Math.toRadians(60), Origin.CHOSEN, "from the inside of the curve, at most"),
  STRAIGHT_LENGTH(Quantity.RATIO, 0.25, Origin.CHOSEN, "over the length of the trunk, at least"),
  STRAIGHT_CALIPERS(Quantity.RATIO, 3, Origin.CHOSEN, "over the caliper there, at least"),
  STRAIGHT_BOW(Quantity.RATIO, 0.012, Origin.CHOSEN, "bow over length, at most"),
  REVERSE_TAPER(
      Quantity.RATIO,
      1.05,
      Origin.TRADE,
      "caliper over that further in; the trade says 1, the rest is for reading"),
  REVERSE_BRANCH(Quantity.RATIO, 1.15, Origin.CHOSEN, "the same on a branch"),
  BRANCH_CALIPER(Quantity.RATIO, 0.5, Origin.TRADE, "branch over trunk at the union, better 1/3"),
  CODOMINANT(
      Quantity.RATIO, 0.70, Origin.PUBLISHED, "Dahle et al.: a union above this is codominant"),
  CROWN(
      Quantity.RATIO,
      0.85,
      Origin.CHOSEN,
      "of the trunk's length; above it a branch may be as thick as the trunk"),
  FIRST_BRANCH(
      Quantity.RATIO, 0.2, Origin.CHOSEN, "height over that of the tree; the trade says 1/3"),
  LEADER_HEIGHT(
      Quantity.RATIO, 0.8, Origin.CHOSEN, "height of its tip over that of the apex, at least"),
  LEADER_ANGLE(Quantity.ANGLE, Math.toRadians(40), Origin.CHOSEN, "from upright, at most"),
  LEADER_CALIPER(Quantity.RATIO, 0.4, Origin.CHOSEN, "over the trunk that goes on, at least"),
  LEADER_THICK(
      Quantity.RATIO, 0.70, Origin.PUBLISHED, "Dahle et al.: above this two stems are codominant"),
  LEADER_LENGTH(Quantity.RATIO, 0.25, Origin.CHOSEN, "over the height of the tree, at least"),
  BARE_TRUNK(Quantity.RATIO, 0.25, Origin.CHOSEN, "between branches, over the length of the trunk"),
  BARE_BASE(
      Quantity.RATIO,
      0.5,
      Origin.CHOSEN,
      "to the first branch, over the length; the trade says 1/3"),
  BARE_BRANCH(
      Quantity.RATIO, 0.5, Origin.CHOSEN, "between side branches, over the length of the branch"),
  BARE_CALIPERS(Quantity.RATIO, 3, Origin.CHOSEN, "over the caliper there, at least"),
  VIEWER_ANGLE(Quantity.ANGLE, Math.toRadians(30), Origin.CHOSEN, "off the line of sight, at most"),
  VIEWER_HEIGHT(Quantity.RATIO, 2.0 / 3, Origin.TRADE, "height over that of the tree, at most"),
  APEX_AWAY(
      Quantity.ANGLE, Math.toRadians(10), Origin.CHOSEN, "from upright, away from the viewer"),
  BENDABLE(
      Quantity.LENGTH, 25e-3, Origin.TRADE, "thicker wood is split or hollowed before it is bent"),
  HEIGHT_TO_CALIPER(
      Quantity.RATIO, 6, Origin.TRADE, "height over the caliper of the base, 6 to 10"),
  WOUND_WIDTH(
      Quantity.RATIO,
      1.0 / 3,
      Origin.TRADE,
      "wound over trunk; above that in stages, never above 1/2"),
  LOST_CONIFER(Quantity.RATIO, 1.0 / 3, Origin.TRADE, "of the foliage in one session, at most"),
  LOST_BROADLEAF(Quantity.RATIO, 0.5, Origin.TRADE, "of the foliage in one session, at most");

  /** Where a limit comes from. */
  public enum Origin {
    /** A rule of the trade: common practice, no source. */
    TRADE,
    /** Published; the note names it. */
    PUBLISHED,
    /** A number of our own for a rule that has none: common practice, no source. */
    CHOSEN
  }

  private static final Set<Limit> BELOW =
      EnumSet.of(
          TWIG_CALIPER,
          BAR_SPACING,
          WHORL_SPACING,
          CROSSING_GAP,
          PARALLEL_ANGLE,
          PARALLEL_SPACING,
          CURVE_SIDE,
          STRAIGHT_BOW,
          FIRST_BRANCH,
          LEADER_ANGLE,
          VIEWER_ANGLE,
          VIEWER_HEIGHT);

  private final Quantity quantity;
  private final double usual;
  private final Origin origin;
  private final String note;

  Limit(Quantity quantity, double usual, Origin origin, String note) {
    this.quantity = quantity;
    this.usual = usual;
    this.origin = origin;
    this.note = note;
  }

  public Quantity quantity() {
    return quantity;
  }

  /** The value where nobody asks for another, SI. */
  public double usual() {
    return usual;
  }

  public Origin origin() {
    return origin;
  }

  /** What is measured and how, in short words. */
  public String note() {
    return note;
  }

  /** Whether values at or below it are the fault, not those above. */
  public boolean isFaultBelow() {
    return BELOW.contains(this);
  }

  /** The largest value that means anything, SI. */
  public double largest() {
    return switch (quantity) {
      case ANGLE -> Math.PI;
      case LENGTH -> 1;
      case RATIO, COUNT -> 100;
    };
  }
}
