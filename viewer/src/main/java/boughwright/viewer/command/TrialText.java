// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.TrialResult;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Words that answers on bent wood share. */
final class TrialText {
  /** The first line where wood is straight-line elastic. */
  static final String ELASTIC =
      "Wood is taken as straight-line elastic here, and no verdict is given.";

  /** The first line where nobody asked for the risk. */
  static final String NO_RISK = "Best guess only: no risk was asked for, and no verdict is given.";

  private TrialText() {}

  /** Where wood is bent hardest and which side is stretched. */
  static String place(Peak peak) {
    String where =
        peak.fromUnion().isPresent()
            ? Shown.millimetres(peak.fromUnion().getAsDouble()) + " from the union of its limb"
            : Shown.fixed(100 * peak.along(), 0) + " % along it";
    return "Segment "
        + peak.segment()
        + ", "
        + where
        + ", stretched on "
        + switch (peak.side()) {
          case "top" -> "top";
          case "underside" -> "the underside";
          default -> "the " + peak.side() + " side, seen from the front";
        };
  }

  /** Says plainly that there is nothing to show, and what to try. */
  static void noPose(TextPage page, Outcome outcome) {
    page.blank();
    page.words(
        outcome.converged()
            ? "The tree would not stay in this pose: it snaps over or falls away on the way."
            : "No pose was found in which the forces balance.");
    if (!outcome.where().isBlank()) {
      page.words("What happened: " + outcome.where() + ".");
    }
    wayOut(page);
  }

  /** What to try where no pose holds and the verdict has said so already. */
  static void wayOut(TextPage page) {
    page.words("No force and no pose is shown, since none would be true. You can try");
    page.point("less tension, or less tightening;");
    page.point("an anchor further to the side, so that the line does not push along the branch;");
    page.point("a tie nearer to the union, or the bend in two proposals, one after the other.");
  }

  /** What to look at, each line once. */
  static void warnings(TextPage page, List<TrialResult> trials) {
    Set<String> warnings = new LinkedHashSet<>();
    trials.forEach(trial -> warnings.addAll(trial.warnings()));
    if (!warnings.isEmpty()) {
      page.heading("Mind");
      warnings.forEach(page::point);
    }
  }

  /** What the numbers rest on, each line once. */
  static void basis(TextPage page, List<TrialResult> trials) {
    Set<String> assumptions = new LinkedHashSet<>();
    trials.forEach(trial -> assumptions.addAll(trial.assumptions()));
    page.heading("What the numbers rest on");
    assumptions.forEach(page::point);
  }

  /** How exact the solver is, which is not how exact the wood is known. */
  static void errors(TextPage page, TrialResult trial) {
    TrialResult.ErrorEstimate error = trial.error();
    page.heading("How exact");
    page.inner(
        "The solver's own estimate of its error: places "
            + Shown.atMost(1000 * error.position(), 3, " mm")
            + (trial.lines().isEmpty()
                ? ""
                : ", tensions " + Shown.atMost(100 * error.tension(), 3, " %"))
            + ", strain "
            + Shown.atMost(100 * error.strain(), 2, " % of the hardest bend")
            + ". The wood itself is known far less well.");
  }

  /** What to take care of where a person pulls. */
  static void cautions(TextPage page) {
    page.heading("When you pull");
    page.point("Wear eye protection: lines under tension and wire ends fly.");
    page.point("Do not stand in line with a taut line.");
    page.point("Tighten slowly, watch the outside of the bend, stop at the first sound.");
    page.point("This is for trees in containers. The numbers are estimates.");
  }
}
