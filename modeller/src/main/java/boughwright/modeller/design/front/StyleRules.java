// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.FrontRules.Rule;
import boughwright.modeller.design.front.MeritCurve.Between;
import boughwright.modeller.design.front.MeritCurve.Less;
import boughwright.modeller.design.front.MeritCurve.More;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.TreeStyle;
import java.util.EnumMap;
import java.util.Map;

/**
 * What each style wants of a front, and how much that counts.
 *
 * <p>All of it is common practice, no source: that a trunk's movement is to be seen, that wounds
 * belong to the back and so on is what the trade says; the numbers are chosen here so that a value
 * a person would call middling is worth about half. Two have a number that the trade repeats: the
 * first branch at a third of the height, and a root base that spreads to twice the caliper of the
 * trunk; for both there is no source either (see {@code docs/theory/fronts.md}).
 */
final class StyleRules {
  private static final double DEGREE = Math.toRadians(1);

  /** The root base is as wide as the trunk: no roots show. */
  private static final double NO_FLARE = 1;

  /** Spread of the root base that is worth half: twice the caliper. Common practice, no source. */
  private static final double FLARE = 2;

  /** The first branch at a third of the height. Common practice, no source. */
  private static final Between A_THIRD = new Between(0.30, 0.37, 0.13);

  private StyleRules() {}

  /** The rules of a style, one for every measure. */
  static Map<FrontMeasure, Rule> of(TreeStyle style) {
    Map<FrontMeasure, Rule> rules = common();
    switch (style) {
      case UPRIGHT -> {}
      case SLANTING -> slanting(rules);
      case CASCADE -> cascade(rules);
      case BROOM -> broom(rules);
      case CLUMP -> clump(rules);
      case TWIN_TRUNK -> twinTrunk(rules);
    }
    return rules;
  }

  /** What a moved, upright trunk wants; the others say where they differ. */
  private static Map<FrontMeasure, Rule> common() {
    Map<FrontMeasure, Rule> rules = new EnumMap<>(FrontMeasure.class);
    put(rules, FrontMeasure.TRUNK_MOVEMENT, 4, new More(0, 0.04));
    put(rules, FrontMeasure.TAPER, 1, new More(0, 0.5));
    put(rules, FrontMeasure.ROOT_BASE_WIDTH, 4, new More(NO_FLARE, FLARE));
    put(rules, FrontMeasure.WOUNDS, 3, new Less(0, 0.03));
    put(rules, FrontMeasure.BRANCHES_AT_VIEWER, 2, new Less(0, 0.03));
    put(rules, FrontMeasure.APEX_LEAN, 2, new Between(0, 12 * DEGREE, 12 * DEGREE));
    put(rules, FrontMeasure.BALANCE_SIDES, 0.5, new Between(-0.3, 0.3, 0.5));
    put(rules, FrontMeasure.BALANCE_OVER_BASE, 2, new Between(0, 0.05, 0.12));
    put(rules, FrontMeasure.DEPTH, 1, new Between(0.5, 0.8, 0.25));
    put(rules, FrontMeasure.FIRST_BRANCH, 0.5, A_THIRD);
    put(rules, FrontMeasure.NEGATIVE_SPACE, 0.5, new Between(0.4, 0.9, 0.3));
    put(rules, FrontMeasure.TRUNK_BULGE, 2, new Between(-0.04, 0, 0.03));
    put(rules, FrontMeasure.DEADWOOD, 1, new More(0, 0.05));
    return rules;
  }

  /** The mass stands well beside the root base, and the sides need not weigh the same. */
  private static void slanting(Map<FrontMeasure, Rule> rules) {
    put(rules, FrontMeasure.TRUNK_MOVEMENT, 2, new More(0, 0.03));
    put(rules, FrontMeasure.BALANCE_SIDES, 1, new Between(-0.5, 0.5, 0.4));
    put(rules, FrontMeasure.BALANCE_OVER_BASE, 3, new Between(0.15, 0.30, 0.12));
  }

  /** The trunk lies over, its line is what is looked at; height says nothing. */
  private static void cascade(Map<FrontMeasure, Rule> rules) {
    put(rules, FrontMeasure.TRUNK_MOVEMENT, 4, new More(0, 0.03));
    put(rules, FrontMeasure.ROOT_BASE_WIDTH, 2, new More(NO_FLARE, FLARE));
    put(rules, FrontMeasure.APEX_LEAN, 2, new Between(0, 15 * DEGREE, 15 * DEGREE));
    put(rules, FrontMeasure.BALANCE_SIDES, 0, new Between(-0.5, 0.5, 0.4));
    put(rules, FrontMeasure.BALANCE_OVER_BASE, 3, new Between(0.30, 0.60, 0.15));
    put(rules, FrontMeasure.FIRST_BRANCH, 0, A_THIRD);
    put(rules, FrontMeasure.TRUNK_BULGE, 1, new Between(-0.04, 0, 0.03));
  }

  /** A straight trunk in the middle of an even crown. */
  private static void broom(Map<FrontMeasure, Rule> rules) {
    put(rules, FrontMeasure.TRUNK_MOVEMENT, 2, new Less(0, 0.02));
    put(rules, FrontMeasure.TAPER, 2, new More(0, 0.5));
    put(rules, FrontMeasure.APEX_LEAN, 2, new Between(-4 * DEGREE, 6 * DEGREE, 8 * DEGREE));
    put(rules, FrontMeasure.BALANCE_SIDES, 3, new Between(-0.1, 0.1, 0.25));
    put(rules, FrontMeasure.BALANCE_OVER_BASE, 3, new Between(0, 0.03, 0.08));
    put(rules, FrontMeasure.BRANCHES_AT_VIEWER, 1, new Less(0, 0.06));
    put(rules, FrontMeasure.DEPTH, 1, new Between(0.4, 0.6, 0.2));
    put(rules, FrontMeasure.TRUNK_BULGE, 1, new Between(-0.02, 0, 0.03));
  }

  /** Several trunks from one root base: open space between them, some behind the others. */
  private static void clump(Map<FrontMeasure, Rule> rules) {
    put(rules, FrontMeasure.TRUNK_MOVEMENT, 2, new More(0, 0.03));
    put(rules, FrontMeasure.BALANCE_SIDES, 2, new Between(-0.2, 0.2, 0.35));
    put(rules, FrontMeasure.DEPTH, 2, new Between(0.3, 0.5, 0.2));
    put(rules, FrontMeasure.FIRST_BRANCH, 0.5, A_THIRD);
    put(rules, FrontMeasure.NEGATIVE_SPACE, 2, new Between(0.4, 0.9, 0.3));
  }

  /** The smaller trunk stands beside the larger one, a little to the back. */
  private static void twinTrunk(Map<FrontMeasure, Rule> rules) {
    put(rules, FrontMeasure.DEPTH, 2, new Between(0.4, 0.7, 0.2));
    put(rules, FrontMeasure.NEGATIVE_SPACE, 2, new Between(0.4, 0.9, 0.3));
    put(rules, FrontMeasure.BALANCE_SIDES, 1, new Between(-0.4, 0.4, 0.35));
  }

  private static void put(
      Map<FrontMeasure, Rule> rules, FrontMeasure measure, double weight, MeritCurve curve) {
    rules.put(measure, new Rule(weight, curve));
  }
}
