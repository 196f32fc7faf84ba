// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.VerdictWords;
import boughwright.viewer.scene.Wording;
import boughwright.viewer.window.look.Explanation;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * One thing that plans are compared by.
 *
 * @param id name for tests
 * @param title what it is called
 * @param of its words for a plan
 * @param what what it is
 */
record CompareRow(String id, String title, Function<Subject, String> of, Explanation what) {
  private static final String NONE = "none";
  private static final double WEEK = 7 * Wording.DAY;

  /** A plan that was tried in full. */
  record Subject(Document document, Plan plan, Trying.Tried tried, DisplayUnits units) {
    TrialResult trial() {
      return tried.trial();
    }

    Optional<LineTrial> hardest() {
      return trial().lines().stream().max(Comparator.comparingDouble(LineTrial::tension));
    }

    Optional<Mark.Apex> apex() {
      return plan.apex().isPresent() && trial().outcome().holds()
          ? Mark.apex(Scene.of(document, Optional.of(plan), Optional.of(trial())).marks())
          : Optional.empty();
    }
  }

  static List<CompareRow> all() {
    return List.of(
        new CompareRow(
            "verdict",
            "Verdict",
            CompareRow::verdict,
            about("What to do.", "From the odds below.")),
        new CompareRow(
            "breaking",
            "Breaking",
            of -> of.trial().risk().map(risk -> Odds.words(risk.breaking())).orElse(NONE),
            about(
                "The odds that anything breaks.",
                "\"Could be\" is the bad end of what nobody knows of this species and tree.")),
        new CompareRow(
            "kink",
            "Kink on the inside",
            of ->
                of.trial()
                    .risk()
                    .flatMap(risk -> risk.of(FailureMode.KINK))
                    .map(one -> Odds.words(one.probability()))
                    .orElse(NONE),
            about("The odds of wrinkles inside the bend, which a limb outlives.", "As above.")),
        new CompareRow(
            "pull",
            "Hardest pull",
            of ->
                of.hardest().map(line -> PullWords.force(line.tension(), of.units())).orElse(NONE),
            about("The pull of the line that pulls hardest.", "Best guess of the wood.")),
        new CompareRow(
            "drawn",
            "That line drawn in",
            of ->
                of.hardest()
                    .map(line -> PullWords.length(line.shortening(), of.units()))
                    .orElse(NONE),
            about("Against the straight distance as measured.", "Hardly depends on the wood.")),
        new CompareRow(
            "strain",
            "Bent hardest",
            of -> of.trial().peak().map(one -> Wording.strain(one)).orElse(NONE),
            about("Wood radius times added curvature, where largest.", "Best guess.")),
        new CompareRow(
            "place",
            "Where",
            of -> of.trial().peak().map(one -> PullWords.place(one, of.units())).orElse(NONE),
            about("The place to mark on the bark.", "To a centimetre or so.")),
        new CompareRow(
            "apex",
            "Apex",
            of ->
                of.apex()
                    .map(one -> of.units().inWords(Wording.beside(one.right(), one.behind())))
                    .orElse("not said"),
            about(
                "Where the apex stands beside the root base, seen from the front, once planted.",
                "As exact as the shape you measured.")),
        new CompareRow(
            "height",
            "Height of the apex",
            of ->
                of.apex().map(one -> PullWords.length(one.at().z(), of.units())).orElse("not said"),
            about("Above the soil line, once planted.", "As exact as the shape you measured.")),
        new CompareRow(
            "stays",
            "Stays by itself after",
            CompareRow::stays,
            about(
                "When so much of the bend stays with everything taken off.",
                "Best guess of creep and growth; both vary by half and more.")));
  }

  private static Explanation about(String what, String howSure) {
    return new Explanation(what, howSure, "A trial of the plan, as the command line makes it.");
  }

  private static String verdict(Subject of) {
    if (!of.trial().outcome().holds()) {
      return "No pose holds.";
    }
    return of.trial().verdict().map(one -> VerdictWords.sentence(one.level())).orElse("not judged");
  }

  private static String stays(Subject of) {
    return of.tried()
        .course()
        .map(
            course ->
                course.stays().likely().isPresent()
                    ? String.format(
                        Locale.ROOT, "%.0f weeks", course.stays().likely().getAsDouble() / WEEK)
                    : "not within two years")
        .orElse("nothing is bent");
  }
}
