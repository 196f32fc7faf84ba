// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.LetGo;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Wording;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a bend gave, for the person at the bench. */
final class BendText {
  private static final int MOST_NOTES = 5;
  private static final String MORE =
      "With --details: what decides most, strains segment by segment, how exact, and what the"
          + " numbers rest on.";

  private final BendAnswer answer;
  private final TextPage page = new TextPage();

  private BendText(BendAnswer answer) {
    this.answer = answer;
  }

  static String of(BendAnswer answer) {
    return new BendText(answer).write();
  }

  private String write() {
    List<TrialResult> trials = answer.tried().stream().map(BendAnswer.Tried::trial).toList();
    Tree tree = answer.file().document().tree();
    OpeningText.write(page, trials, ResponseWord.of(tree), TrialSpecies.limitsOf(tree));
    answer.tried().forEach(this::plan);
    TrialText.warnings(page, trials);
    if (answer.details()) {
      TrialText.basis(page, trials);
    }
    notes();
    if (answer.tried().stream().anyMatch(tried -> tried.trial().outcome().holds())) {
      TrialText.cautions(page);
    }
    answer.picture().ifPresent(picture -> page.heading("Picture: " + picture));
    if (!answer.details()) {
      page.heading(MORE);
    }
    return page.toString();
  }

  private void plan(BendAnswer.Tried tried) {
    TrialResult trial = tried.trial();
    Document document = answer.file().document();
    page.title(
        document.tree().name() + ", plan " + trial.plan() + ", " + proposals(trial.proposals()));
    trial.verdict().ifPresent(verdict -> VerdictText.write(page, verdict));
    if (!trial.outcome().holds()) {
      noPose(trial);
      return;
    }
    if (!trial.lines().isEmpty()) {
      page.heading("Guy-lines (held: " + held(trial.held()) + ")");
      trial.risk().ifPresent(risk -> PullText.write(page, trial.lines(), risk));
      page.table(LineText.table(tried.choice(), trial.lines()));
      page.inner("Tighten by: against the straight distance, pad to anchor, before the bend.");
    }
    Means.write(page, tried.means(), answer.details());
    WarmthText.write(page, answer.said().celsius());
    trial.risk().ifPresent(risk -> risk(trial, risk));
    if (trial.risk().isEmpty()) {
      peak(trial, TrialSpecies.limitsOf(document.tree()));
    }
    tried.letGo().ifPresent(this::letGo);
    tried
        .course()
        .ifPresent(
            c -> CourseText.write(page, c, Optional.of(answer.said().on()), answer.details()));
    tried.apex().ifPresent(apex -> apex(tried, apex));
    if (answer.details()) {
      details(trial);
    }
  }

  private void details(TrialResult trial) {
    trial.risk().ifPresent(risk -> ShareText.write(page, risk));
    if (trial.risk().isPresent()) {
      peak(trial, TrialSpecies.limitsOf(answer.file().document().tree()));
    }
    SegmentText.write(page, trial.segments());
    if (trial.peak().isPresent()) {
      TrialText.errors(page, trial);
    }
  }

  private void noPose(TrialResult trial) {
    if (trial.verdict().isEmpty()) {
      TrialText.noPose(page, trial.outcome());
    } else {
      page.blank();
      TrialText.wayOut(page);
    }
  }

  /** How lines are held; hands and coils are told of elsewhere. */
  private static String held(String held) {
    return Arrays.stream(held.split("\\+"))
        .filter(how -> !how.equals("hand") && !how.equals("coil"))
        .collect(Collectors.joining(", "));
  }

  private static String proposals(List<String> ids) {
    if (ids.isEmpty()) {
      return "no proposal";
    }
    return (ids.size() == 1 ? "proposal " : "proposals ") + String.join(", ", ids);
  }

  private void peak(TrialResult trial, Optional<Species> limits) {
    page.heading("Bent hardest");
    if (trial.peak().isEmpty()) {
      page.inner("Nothing is bent.");
      return;
    }
    Peak peak = trial.peak().get();
    page.inner(TrialText.place(peak) + ".");
    page.inner("The bending moment there is " + Shown.newtonMetres(peak.moment()) + ".");
    if (trial.risk().isEmpty()) {
      Published.write(page, "bending strain there", peak.bendingStrain(), limits);
    } else {
      PeakText.strains(page, peak);
    }
  }

  private void risk(TrialResult trial, Risk risk) {
    RiskText.write(page, risk);
    trial.peak().ifPresent(peak -> YieldText.write(page, peak, risk));
  }

  private void letGo(LetGo found) {
    page.heading("If you let go at once");
    page.inner(
        "The end of "
            + found.segment()
            + " moves "
            + Shown.millimetres(found.moved())
            + " and, let go, comes to rest "
            + Shown.millimetres(found.stays())
            + " from where it was. What creep and growth add with time is not in it.");
  }

  private void apex(BendAnswer.Tried tried, Mark.Apex apex) {
    double front = tried.choice().plan().frontAzimuth().orElse(0);
    page.heading("Apex " + tried.choice().plan().apex().orElse(""));
    page.inner(
        "Its tip comes to stand "
            + Wording.beside(apex.right(), apex.behind())
            + ", seen from the front (azimuth "
            + Wording.azimuth(front)
            + "), and "
            + Wording.millimetres(apex.at().z())
            + " above the soil line, with the tree at its planting angle.");
  }

  private void notes() {
    List<Problem> notes = answer.file().warnings();
    if (!notes.isEmpty()) {
      page.heading("Worth a look in the file");
      notes.stream().limit(MOST_NOTES).forEach(note -> page.point(note.line()));
      if (notes.size() > MOST_NOTES) {
        page.point((notes.size() - MOST_NOTES) + " more; the verb check shows them all");
      }
    }
  }
}
