// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.choice.PlanFigures;
import boughwright.physics.grow.CutTime;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.TraceWords;
import boughwright.viewer.scene.VerdictWords;
import boughwright.viewer.scene.Wording;
import boughwright.viewer.scene.YearsWords;
import boughwright.viewer.window.look.Explanation;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

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
  record Subject(Document document, PlanFigures figures, DisplayUnits units) {
    static Subject of(Document document, Trying.Tried tried, DisplayUnits units) {
      CutTime time =
          CutTime.of(Optional.of(LocalDate.now()), document.tree().condition().hemisphere());
      return new Subject(document, PlanFigures.of(document, tried, time), units);
    }

    Plan plan() {
      return figures.plan();
    }

    Trying.Tried tried() {
      return figures.tried();
    }

    TrialResult trial() {
      return tried().trial();
    }

    Optional<LineTrial> hardest() {
      return figures.hardest();
    }

    Optional<Mark.Apex> apex() {
      return plan().apex().isPresent() && trial().outcome().holds()
          ? Mark.apex(Scene.of(document, Optional.of(plan()), Optional.of(trial())).marks())
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
                "Best guess of creep and growth; both vary by half and more.")),
        new CompareRow(
            "wounds",
            "Wounds",
            CompareRow::wounds,
            about(
                "Those that the cuts make, and those that are there and stay.",
                "A cut is taken as square to the wood.")),
        new CompareRow(
            "closed",
            "Wounds closed in",
            of ->
                of.figures()
                    .slowest()
                    .map(one -> YearsWords.of(one.closure().years()))
                    .orElse(NONE),
            about(
                "Callus from both sides, by the ring laid on each year.",
                "From fast growth to slow; measure the ring to know better.")),
        new CompareRow(
            "step",
            "Step to the apex",
            of ->
                of.figures()
                    .takeover()
                    .map(one -> String.format(Locale.ROOT, "%.2f", one.ratio()))
                    .orElse(NONE),
            about(
                "Caliper of the apex over that of the wood it takes over from.",
                "As exact as your caliper.")),
        new CompareRow(
            "thick",
            "Thick enough in",
            of -> YearsWords.of(of.figures().thickening()),
            about(
                "When that step is 0.6, the least that looks grown (common practice, no source).",
                "From fast growth to slow.")),
        new CompareRow(
            "front",
            "Front, of 100",
            of -> of.figures().front().map(one -> FrontWords.score(one.total())).orElse("not said"),
            about(
                "How good the front of the plan is at its planting angle, on the bent tree.",
                "By weights that you choose.")),
        new CompareRow(
            "undone",
            "Can be undone",
            of -> traces(of, true),
            about("What leaves the tree as it was.", "What the plan holds.")),
        new CompareRow(
            "lasting",
            "Cannot be undone",
            of -> traces(of, false),
            about("What stays.", "Odds and set are estimates.")));
  }

  private static String wounds(Subject of) {
    return of.figures()
        .widest()
        .map(
            one ->
                of.figures().wounds().size()
                    + ", the widest "
                    + PullWords.length(one.closure().width(), of.units()))
        .orElse(NONE);
  }

  private static String traces(Subject of, boolean undone) {
    String words =
        of.figures().traces().stream()
            .filter(trace -> trace.kind().canBeUndone() == undone)
            .map(TraceWords::of)
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "nothing" : words;
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
