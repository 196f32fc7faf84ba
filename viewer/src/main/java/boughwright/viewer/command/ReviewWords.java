// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.FaultKind;
import boughwright.modeller.design.review.NotJudged;
import boughwright.modeller.design.review.Review;
import boughwright.modeller.problem.VisibleText;
import boughwright.viewer.scene.FaultWords;
import java.util.ArrayList;
import java.util.List;

/** Short words of a review. */
final class ReviewWords {
  private static final int MOST_IDS = 6;

  private ReviewWords() {}

  /** How much was found. */
  static String count(Review review) {
    int count = review.faults().size();
    return count == 0 ? "No fault found" : count == 1 ? "1 fault found" : count + " faults found";
  }

  /** Such as "Branch too thick for its place: b1". */
  static String title(Fault fault) {
    return capital(FaultWords.name(fault.kind())) + ": " + segments(fault);
  }

  static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Names of the segments, those to act on first. */
  static String segments(Fault fault) {
    List<String> ids = fault.segments();
    boolean stretch =
        fault.kind() == FaultKind.STRAIGHT
            || fault.kind() == FaultKind.REVERSE_TAPER
            || fault.kind() == FaultKind.BARE_STRETCH;
    if (stretch && ids.size() > 1) {
      return VisibleText.of(ids.get(0) + " to " + ids.get(ids.size() - 1));
    }
    String more = ids.size() > MOST_IDS ? " and " + (ids.size() - MOST_IDS) + " more" : "";
    return VisibleText.of(String.join(", ", ids.subList(0, Math.min(MOST_IDS, ids.size())))) + more;
  }

  /** For the list beside a picture. */
  static List<String> listed(Fault fault) {
    List<String> words = new ArrayList<>();
    words.add(title(fault));
    words.add(
        FaultWords.measured(fault.measure()) + " (" + FaultWords.limit(fault.measure()) + ")");
    return words;
  }

  static String reason(NotJudged.Reason reason) {
    return switch (reason) {
      case NO_FRONT -> "no front is chosen; give --plan or --front-deg";
      case STYLE -> "no fault in this style";
      case NO_BRANCH -> "no branch is thick and long enough to be judged";
      case ONE_SEGMENT -> "the trunk was measured as one straight segment";
      case STRAIGHT_TRUNK -> "the trunk is straight from base to apex, a style of its own";
      case NOT_ABOVE_BASE -> "nothing stands above the trunk base";
    };
  }
}
