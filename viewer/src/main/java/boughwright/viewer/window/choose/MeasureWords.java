// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.front.FrontReason;
import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.TreeStyle;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.scene.Wording;
import boughwright.viewer.window.look.Explanation;
import java.util.List;

/** What fronts and their measures are called in the window, and what their numbers are. */
final class MeasureWords {
  private static final double HUNDRED = 100;

  /** No more than so many reasons for a front, and against it, are told. */
  private static final int REASONS = 2;

  private static final String EXACT = "As exact as the shape you measured.";

  private MeasureWords() {}

  static String id(FrontMeasure measure) {
    return "choose." + FrontWords.key(measure);
  }

  static String title(FrontMeasure measure) {
    return Wording.capital(FrontWords.name(measure));
  }

  static String style(TreeStyle style) {
    return Wording.capital(FrontWords.style(style).replace('-', ' '));
  }

  /** What a measure says, how sure, and from where. */
  static Explanation about(FrontScore.Part part) {
    return new Explanation(
        what(part.measure())
            + " Here: "
            + FrontWords.value(part.measure(), part.value())
            + ". The bar: worth "
            + Math.round(HUNDRED * part.merit())
            + " of 100. It counts for "
            + Math.round(HUNDRED * part.share())
            + " % of the score.",
        EXACT,
        "Measured on the tree as you recorded it, its cuts made. What a value is worth and how much"
            + " it counts: common practice, no source.");
  }

  private static String what(FrontMeasure measure) {
    return switch (measure) {
      case TRUNK_MOVEMENT ->
          "How far the trunk is seen beside the straight line from base to apex, over its length.";
      case TAPER ->
          "The caliper the trunk is seen to lose from base to apex, over that at the base.";
      case ROOT_BASE_WIDTH ->
          "How wide trunk base and roots look above the soil, over the caliper at the base.";
      case WOUNDS -> "The area of wounds that is seen, over that of the trunk laid flat.";
      case BRANCHES_AT_VIEWER ->
          "The branch wood below the crown that points straight at you, and the trunk it hides.";
      case APEX_LEAN -> "How far the line from base to apex leans toward you or away.";
      case BALANCE_SIDES -> "How much heavier the branches are on one side of the trunk.";
      case BALANCE_OVER_BASE ->
          "How far beside the trunk base the middle of the mass stands, over the size of the tree.";
      case DEPTH -> "The part of the branches that is farther from you than where they start.";
      case FIRST_BRANCH -> "How high the first branch seen starts, over the height of the tree.";
      case NEGATIVE_SPACE -> "The part of the outline of the tree that nothing covers.";
      case TRUNK_BULGE -> "How much nearer to you the trunk is than the line from base to apex.";
      case DEADWOOD -> "The area of deadwood that is seen, over that of the trunk laid flat.";
    };
  }

  /** Why a measure says nothing of this tree. */
  static String unsaid(FrontMeasure measure) {
    return switch (measure) {
      case TRUNK_MOVEMENT, TRUNK_BULGE -> "The trunk is one straight piece.";
      case ROOT_BASE_WIDTH -> "No roots are recorded.";
      case WOUNDS -> "No wounds are recorded.";
      case DEADWOOD -> "There is no deadwood.";
      case BRANCHES_AT_VIEWER, BALANCE_SIDES, DEPTH, FIRST_BRANCH -> "There are no branches.";
      case TAPER, APEX_LEAN, BALANCE_OVER_BASE, NEGATIVE_SPACE -> "It cannot be said of this tree.";
    };
  }

  static Explanation aboutScore() {
    return new Explanation(
        "The mean of what each measure is worth, by how much it counts: 100 is as good as it gets.",
        EXACT,
        "Common practice, no source: the style says what counts how much, and you can change it.");
  }

  /** A pose as a sentence. */
  static String sentence(FrontPose pose) {
    return Wording.capital(FrontWords.pose(pose)) + ".";
  }

  /** What tells a front from the others, in sentences. */
  static String reasons(List<FrontReason> reasons) {
    StringBuilder words = new StringBuilder();
    tell(words, "For it: ", reasons.stream().filter(FrontReason::isFor).toList());
    tell(words, "Against it: ", reasons.stream().filter(one -> !one.isFor()).toList());
    return words.isEmpty() ? " Hardly differs from the others." : words.toString();
  }

  private static void tell(StringBuilder words, String head, List<FrontReason> reasons) {
    if (!reasons.isEmpty()) {
      words.append(' ').append(head);
      words.append(
          String.join("; ", reasons.stream().limit(REASONS).map(FrontWords::reason).toList()));
      words.append('.');
    }
  }
}
