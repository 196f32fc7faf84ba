// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.front.Front;
import boughwright.modeller.design.front.FrontReason;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.problem.VisibleText;
import boughwright.viewer.picture.FrontCard;
import boughwright.viewer.picture.FrontsWords;
import boughwright.viewer.scene.FrontWords;
import java.util.ArrayList;
import java.util.List;

/** The words of the pictures of fronts. */
final class FrontsPage {
  /** Most reasons under a front, each way. */
  private static final int REASONS = 3;

  private FrontsPage() {}

  /** Words of the fronts side by side; of a tree without a front, the tree as it was measured. */
  static FrontsWords side(FrontsAnswer answer) {
    FrontsAnswer.Found found = answer.found().orElseThrow();
    List<FrontCard> cards =
        found.hasChoice()
            ? cards(found)
            : List.of(
                new FrontCard(
                    FrontPose.upright(0), "As measured", "azimuth 0\u00B0, not tilted", List.of()));
    return words(
        answer,
        cards,
        "Dashed: a plumb line through the middle of the root base. Scores are of 100, by weights"
            + " that are common practice, no source.");
  }

  /** Words of the map, with the places of the fronts. */
  static FrontsWords map(FrontsAnswer answer) {
    FrontsAnswer.Found found = answer.found().orElseThrow();
    return words(
        answer,
        found.hasChoice() ? cards(found) : List.of(),
        "Numbers: the fronts, the best first. The map is within "
            + FrontWords.score(found.fronts().blur())
            + " of what a look at every pose would give; the fronts are measured truly.");
  }

  private static FrontsWords words(FrontsAnswer answer, List<FrontCard> cards, String note) {
    return new FrontsWords(
        VisibleText.of(answer.asked().file().document().tree().name()),
        VisibleText.of(FrontsWording.about(answer.asked())),
        FrontsWording.statement(answer.found().orElseThrow()),
        note,
        cards);
  }

  private static List<FrontCard> cards(FrontsAnswer.Found found) {
    List<FrontCard> cards = new ArrayList<>();
    for (Front front : found.fronts().fronts()) {
      List<String> lines = new ArrayList<>();
      lines.addAll(lines(front, true, "+ "));
      lines.addAll(lines(front, false, "\u2212 "));
      cards.add(
          new FrontCard(
              front.pose(),
              (cards.size() + 1) + "   score " + FrontWords.score(front.score().total()),
              FrontWords.pose(front.pose()),
              lines));
    }
    return cards;
  }

  private static List<String> lines(Front front, boolean speaksFor, String mark) {
    // A number and its per cent sign stay on one line.
    return told(front, speaksFor).stream()
        .map(FrontWords::reason)
        .map(reason -> mark + reason.replace(" %", "\u00A0%"))
        .toList();
  }

  /** The reasons that matter most, for a front or against it. */
  static List<FrontReason> told(Front front, boolean speaksFor) {
    return front.reasons().stream().filter(r -> r.isFor() == speaksFor).limit(REASONS).toList();
  }
}
