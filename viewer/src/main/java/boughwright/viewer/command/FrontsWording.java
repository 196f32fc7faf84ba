// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.front.Front;
import boughwright.modeller.design.front.FrontCase;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.viewer.scene.FrontWords;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What is said of fronts, on paper and on a terminal. */
final class FrontsWording {
  private FrontsWording() {}

  /** Plan, style and eye, on one line. */
  static String about(FrontsAnswer.Asked asked) {
    return asked.plan().map(plan -> "Plan " + plan.id() + ", its cuts made").orElse("Uncut")
        + (asked.tree().inLeaf() ? "  \u00B7  in leaf" + guessed(asked) : "")
        + "  \u00B7  style "
        + FrontWords.style(asked.rules().style())
        + "  \u00B7  "
        + eye(asked);
  }

  private static String guessed(FrontsAnswer.Asked asked) {
    return asked.file().document().tree().foliage().pads().isEmpty() ? ", a guess" : "";
  }

  /** What the tree wears where it is looked at. */
  static String dress(FrontsAnswer.Asked asked) {
    if (!asked.tree().inLeaf()) {
      return "bare, as the file holds it";
    }
    return guessed(asked).isEmpty()
        ? "in leaf, with the pads of the file"
        : "in leaf, with pads that are a guess: the file holds none";
  }

  private static String eye(FrontsAnswer.Asked asked) {
    if (asked.wishes().eyeHeight().isEmpty()) {
      return "eye level with the middle of the tree";
    }
    double distance = asked.wishes().eyeDistance().orElse(FrontCase.USUAL_DISTANCE);
    return "eye "
        + Shown.fixed(1000 * asked.wishes().eyeHeight().getAsDouble(), 0)
        + " mm above the soil line, "
        + Shown.fixed(1000 * distance, 0)
        + " mm away";
  }

  /** What came out, in a sentence or two. */
  static String statement(FrontsAnswer.Found found) {
    List<Front> fronts = found.fronts().fronts();
    if (fronts.isEmpty()) {
      return "No score can be said: nothing that counts can be measured on this tree.";
    }
    double best = fronts.get(0).score().total();
    if (!found.hasChoice()) {
      return "No side of this tree is better than another: their scores lie within "
          + FrontWords.score(best - found.fronts().worst().total())
          + " of 100, and measuring tells no less than "
          + FrontWords.score(found.doubt().sides())
          + ".";
    }
    List<String> alike = alike(found);
    String first =
        "Best: "
            + FrontWords.pose(fronts.get(0).pose())
            + ", score "
            + FrontWords.score(best)
            + ".";
    return alike.isEmpty()
        ? first
        : first
            + " Measuring cannot tell it from "
            + (alike.size() == 1 ? "front " : "fronts ")
            + joined(alike)
            + ".";
  }

  private static List<String> alike(FrontsAnswer.Found found) {
    List<String> alike = new ArrayList<>();
    for (int n = 1; n < found.fronts().fronts().size(); n++) {
      if (!found.doubt().tells(found.fronts(), n)) {
        alike.add(String.valueOf(n + 1));
      }
    }
    return alike;
  }

  private static String joined(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** What cannot be said of this tree, and why. */
  static List<String> unsaid(List<FrontMeasure> measures) {
    return measures.stream()
        .collect(Collectors.groupingBy(FrontsWording::because, TreeMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(
            entry ->
                joined(entry.getValue().stream().map(FrontWords::name).toList())
                    + ": "
                    + entry.getKey())
        .toList();
  }

  private static String because(FrontMeasure measure) {
    return switch (measure) {
      case ROOT_BASE_WIDTH -> "the file holds no root that shows above the soil line";
      case WOUNDS -> "the file holds no wound on this wood";
      case DEADWOOD -> "the file holds no deadwood on this tree";
      case TRUNK_MOVEMENT, TRUNK_BULGE, APEX_LEAN, TAPER ->
          "the trunk line is one straight piece, or comes back to where it starts";
      case BRANCHES_AT_VIEWER, DEPTH, BALANCE_SIDES, FIRST_BRANCH, NEGATIVE_SPACE ->
          "the tree has no branches";
      case BALANCE_OVER_BASE -> "the tree has no wood above the roots";
    };
  }
}
