// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Plan;
import boughwright.physics.choice.OpenWound;
import boughwright.physics.choice.PlanFigures;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.Probability;
import boughwright.physics.trial.Risk;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.scene.TraceWords;
import boughwright.viewer.scene.YearsWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Plans side by side, for the person at the bench. */
final class CompareText {
  private static final String NONE = "-";
  private static final double WEEK = 7 * 86_400;

  /** Where a name is longer, numbers stand for names, as four have to stand beside one another. */
  private static final int LONGEST_NAME = 12;

  private final CompareAnswer answer;
  private final TextPage page = new TextPage();

  private CompareText(CompareAnswer answer) {
    this.answer = answer;
  }

  static String of(CompareAnswer answer) {
    return new CompareText(answer).write();
  }

  private String write() {
    answer.plans().forEach(one -> page.words(title(one.plan()) + ": " + verdict(one)));
    page.title(answer.file().document().tree().name() + ", plans side by side");
    page.table(table());
    page.inner(
        "Years as likely and from fast growth to slow. Wounds: those the cuts make and those that"
            + " are there and stay; faces: all of them together. Step: caliper of the apex over"
            + " that of the wood it takes over from; thick enough: a step of 0.6. Front: score of"
            + " 100, by what the verb fronts measures, on the bent tree.");
    page.heading("What can be undone");
    answer.plans().forEach(one -> traces(one, true));
    page.heading("What cannot");
    answer.plans().forEach(one -> traces(one, false));
    answer.picture().ifPresent(picture -> page.heading("Picture: " + picture));
    return page.toString();
  }

  private static String verdict(PlanFigures one) {
    if (!one.tried().trial().outcome().holds()) {
      return "no pose holds.";
    }
    return one.tried()
        .trial()
        .verdict()
        .map(verdict -> verdict.level().words() + ". " + verdict.reason())
        .orElse(
            one.plan().proposals().isEmpty() ? "it bends nothing." : "no verdict was asked for.");
  }

  private TextTable table() {
    TextTable table = new TextTable(1);
    row(table, "plan", one -> isLong() ? number(one.plan()) : one.plan().id());
    row(
        table,
        "breaking",
        one -> risk(one).map(Risk::breaking).map(CompareText::odds).orElse(NONE));
    row(table, "could be", one -> risk(one).map(risk -> bare(risk.breaking().high())).orElse(NONE));
    row(table, "kink inside", one -> risk(one).flatMap(CompareText::kink).orElse(NONE));
    row(
        table,
        "hardest pull",
        one -> one.hardest().map(line -> Shown.newtons(line.tension())).orElse(NONE));
    row(table, "wounds", one -> String.valueOf(one.wounds().size()));
    row(
        table,
        "widest",
        one -> one.widest().map(OpenWound::closure).map(w -> millimetres(w.width())).orElse(NONE));
    row(table, "faces", one -> Shown.fixed(1e4 * one.woundArea(), 1) + " cm2");
    row(
        table,
        "slowest closed",
        one -> one.slowest().map(w -> YearsWords.brief(w.closure().years())).orElse(NONE));
    row(table, "thick enough", one -> YearsWords.brief(one.thickening()));
    row(table, "bend stays", one -> one.stays().map(CompareText::stays).orElse(NONE));
    row(
        table,
        "height",
        one -> one.height().isPresent() ? millimetres(one.height().getAsDouble()) : NONE);
    row(
        table,
        "step",
        one -> one.takeover().map(step -> Shown.fixed(step.ratio(), 2)).orElse(NONE));
    row(
        table,
        "front",
        one -> one.front().map(front -> FrontWords.score(front.total())).orElse(NONE));
    return table;
  }

  private void row(TextTable table, String title, Function<PlanFigures, String> cell) {
    List<String> cells = new ArrayList<>(List.of(title));
    answer.plans().forEach(one -> cells.add(cell.apply(one)));
    table.row(cells.toArray(String[]::new));
  }

  private boolean isLong() {
    return answer.plans().stream().anyMatch(one -> one.plan().id().length() > LONGEST_NAME);
  }

  private String number(Plan plan) {
    return String.valueOf(
        answer.plans().stream().map(PlanFigures::plan).toList().indexOf(plan) + 1);
  }

  private String title(Plan plan) {
    return "Plan " + (isLong() ? number(plan) + ", " : "") + plan.id();
  }

  private static Optional<Risk> risk(PlanFigures one) {
    return one.tried().trial().risk();
  }

  private static Optional<String> kink(Risk risk) {
    return risk.of(FailureMode.KINK).map(kink -> odds(kink.probability()));
  }

  private static String odds(Probability probability) {
    return bare(probability.p());
  }

  private static String bare(double p) {
    return Odds.words(p).replaceFirst("^about ", "").replaceFirst("^less than ", "under ");
  }

  private static String millimetres(double length) {
    return Shown.fixed(1000 * length, 0) + " mm";
  }

  private static String stays(Course.Span span) {
    return span.likely().isPresent()
        ? Shown.fixed(span.likely().getAsDouble() / WEEK, 0) + " weeks"
        : "not in 2 years";
  }

  private void traces(PlanFigures one, boolean undone) {
    List<String> words =
        one.traces().stream()
            .filter(trace -> trace.kind().canBeUndone() == undone)
            .map(TraceWords::of)
            .toList();
    page.point(
        (isLong() ? number(one.plan()) + ", " : "")
            + one.plan().id()
            + ": "
            + (words.isEmpty() ? "nothing" : String.join("; ", words))
            + ".");
  }
}
