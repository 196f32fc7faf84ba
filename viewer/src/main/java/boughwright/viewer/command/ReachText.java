// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.units.ForceUnit;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.Reached;
import boughwright.physics.reach.Target;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Optional;

/** Which lines bring a place where it is wanted, for the person at the bench. */
final class ReachText {
  /** A miss a person would not see [m]. */
  private static final double REACHED = 0.001;

  /** A miss of direction a person would not see [rad]. */
  private static final double REACHED_ANGLE = Math.toRadians(1);

  private final ReachAnswer answer;
  private final Target target;
  private final TextPage page = new TextPage();

  private ReachText(ReachAnswer answer) {
    this.answer = answer;
    target = answer.target();
  }

  static String of(ReachAnswer answer) {
    return new ReachText(answer).write();
  }

  private String write() {
    opening();
    page.title(
        answer.file().document().tree().name()
            + ", "
            + ReachWords.place(target)
            + " "
            + ReachWords.wanted(target));
    page.inner("Now it is " + ReachWords.missing(target, answer.reached().startMiss()) + " off.");
    table();
    for (int n = 0; n < answer.drawn().size(); n++) {
      choice(n + 1, answer.drawn().get(n));
    }
    missingAnchor();
    TrialText.basis(page, answer.drawn().stream().map(ReachAnswer.Drawn::trial).toList());
    TrialText.cautions(page);
    kept();
    return page.toString();
  }

  private Choice first() {
    return answer.drawn().get(0).choice();
  }

  private void opening() {
    Choice first = first();
    String lines = ReachWords.means(first);
    String place = ReachWords.place(target);
    String breaking = ReachWords.breaking(answer.drawn().get(0));
    String risk = breaking.equals("-") ? "" : " Breaking: " + breaking + ".";
    if (isReached(first)) {
      page.words(lines + place + " there." + risk);
      return;
    }
    String missing = ReachWords.missing(target, first);
    String because =
        first.isEased()
            ? ": nearer, breaking would come to more than " + allowed()
            : " with what there is to tie to";
    page.words("As near as " + missing + because + "." + risk);
  }

  private String allowed() {
    return Odds.words(answer.mostRisk()).replaceFirst("^about ", "");
  }

  private boolean isReached(Choice choice) {
    return target instanceof Target.Heading heading
        ? choice.miss() <= REACHED_ANGLE * heading.arm()
        : choice.miss() <= REACHED;
  }

  private void table() {
    page.heading("Choices");
    TextTable table =
        new TextTable(2).row("choice", "which", "off by", "breaking", "pull", "lines");
    for (int n = 0; n < answer.drawn().size(); n++) {
      ReachAnswer.Drawn drawn = answer.drawn().get(n);
      table.row(
          String.valueOf(n + 1),
          ReachWords.why(drawn.choice().why()),
          ReachWords.missing(target, drawn.choice()),
          ReachWords.breaking(drawn),
          Shown.newtons(drawn.pull()),
          ReachWords.count(drawn.choice()));
    }
    page.table(table);
    page.inner("Pull: of the hardest pulling line, or of your hand where wire is coiled.");
    if (answer.drawn().size() > 1) {
      page.inner(
          "Breaking is drawn for choice "
              + answer.kept().choice()
              + " and guessed for the others; --choice N tells another in full.");
    }
    answer
        .reached()
        .noCoil()
        .ifPresent(why -> page.inner("No coil: " + why.found() + ". " + why.remedy() + "."));
  }

  private void choice(int number, ReachAnswer.Drawn drawn) {
    Choice choice = drawn.choice();
    String verdict =
        drawn.trial().verdict().map(judged -> "; verdict: " + judged.level().words()).orElse("");
    page.heading("Choice " + number + ", " + ReachWords.why(choice.why()) + verdict);
    for (Choice.Line line : choice.lines()) {
      line(line, trialOf(choice, drawn.borne(), line));
    }
    choice.bend().ifPresent(bend -> ReachCoilText.write(page, bend, choice));
    drawn.trial().verdict().ifPresent(judged -> page.inner("Why: " + judged.reason()));
    if (choice.isEased()) {
      page.inner(
          "Tightened further these lines would come to "
              + ReachWords.missing(target, choice.nearest())
              + ", at more risk than "
              + allowed()
              + ".");
    }
    over(drawn);
    means(drawn);
  }

  /** Tackle, what the coil holds, and the stages. */
  private void means(ReachAnswer.Drawn drawn) {
    CoilText.write(page, drawn.coils());
    HardwareText.write(page, drawn.hardware(), false);
    drawn.course().ifPresent(c -> CourseText.write(page, c, Optional.of(answer.start()), false));
  }

  private void over(ReachAnswer.Drawn drawn) {
    drawn
        .trial()
        .risk()
        .filter(risk -> risk.breaking().p() > answer.mostRisk())
        .ifPresent(
            risk ->
                page.inner(
                    "Drawn, it risks more than the " + allowed() + " allowed: ease it a bit."));
  }

  /** What the trial says of a line; proposals that were kept have lines before it. */
  private static LineTrial trialOf(Choice choice, TrialResult trial, Choice.Line line) {
    String id = choice.proposal().guyLines().get(choice.lines().indexOf(line)).id();
    return trial.lines().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private void line(Choice.Line line, LineTrial trial) {
    page.inner(
        trial.id()
            + ": tie it to "
            + line.tie().place().spot().segment()
            + ", "
            + Shown.fixed(1000 * line.tie().place().fromUnion(), 0)
            + " mm from the union of its limb, the pad on the "
            + side(line.padSide())
            + ", and to "
            + ReachWords.anchor(line.tie().anchor())
            + ".");
    page.further(
        "Tighten by "
            + Shown.millimetres(trial.shortening())
            + ", to "
            + Shown.millimetres(trial.length())
            + "; it then pulls "
            + Shown.newtons(trial.tension())
            + " ("
            + Shown.kilograms(ForceUnit.KILOGRAM_FORCE.fromNewtons(trial.tension()))
            + " on a balance).");
    if (line.mustStopPad()) {
      page.further(
          "Stop its pad from sliding: the line meets the branch at "
              + Shown.fixed(Math.toDegrees(line.angle()), 0)
              + " degrees. Lash the pad on, or tie it against a side branch.");
    }
  }

  private static String side(String side) {
    List<String> asIs = List.of("top", "underside", "front", "back");
    return asIs.contains(side) ? side : side + " side";
  }

  private void missingAnchor() {
    answer
        .reached()
        .missingAnchor()
        .ifPresent(
            (Reached.MissingAnchor anchor) ->
                page.heading("An anchor that is missing")
                    .inner(
                        "A line from "
                            + anchor.place().spot().segment()
                            + ", "
                            + Shown.fixed(1000 * anchor.place().fromUnion(), 0)
                            + " mm from the union, toward "
                            + ReachWords.point(anchor.at())
                            + " would come to "
                            + ReachWords.missing(target, anchor.miss())
                            + ", whatever the risk. Put a screw or a frame there, list it in the"
                            + " file's \"anchors\", and ask again."));
  }

  private void kept() {
    int number = answer.kept().choice();
    AddToPlan.tell(page, "Choice " + number, answer.kept().plan());
    answer
        .kept()
        .picture()
        .ifPresent(picture -> page.heading("Picture of choice " + number + ": " + picture));
  }
}
