// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.front.Front;
import boughwright.modeller.design.front.FrontReason;
import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.problem.Problem;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.scene.GroundWords;
import java.util.ArrayList;
import java.util.List;

/** Fronts for a person at a terminal. */
final class FrontsText {
  private final FrontsAnswer answer;
  private final FrontsGround ground;
  private final TextPage page = new TextPage();

  private FrontsText(FrontsAnswer answer) {
    this.answer = answer;
    ground = new FrontsGround(answer.asked());
  }

  static String of(FrontsAnswer answer) {
    return new FrontsText(answer).write();
  }

  private String write() {
    answer.found().ifPresent(this::found);
    answer.at().ifPresent(this::explained);
    basis();
    kept();
    return page.toString();
  }

  private void title() {
    page.title(answer.asked().file().document().tree().name());
    page.inner(FrontsWording.about(answer.asked()).replaceAll(" +\u00B7 +", ", "));
  }

  private void found(FrontsAnswer.Found found) {
    page.words(FrontsWording.statement(found));
    title();
    if (!found.hasChoice()) {
      page.inner(
          "So no front is put forward. Choose by what the file does not hold, and ask what one"
              + " front shows with --at AZ.");
      found.fronts().fronts().stream().findFirst().ifPresent(front -> unsaid(front.score()));
      return;
    }
    table(found);
    List<Front> fronts = found.fronts().fronts();
    for (int n = 0; n < fronts.size(); n++) {
      front(n, found);
    }
    measures(fronts);
    unsaid(fronts.get(0).score());
  }

  private void table(FrontsAnswer.Found found) {
    page.heading("Fronts");
    TextTable table =
        new TextTable(1).row("front", "score", "azimuth", "tilt right", "tilt to you");
    List<Front> fronts = found.fronts().fronts();
    for (int n = 0; n < fronts.size(); n++) {
      Front front = fronts.get(n);
      table.row(
          String.valueOf(n + 1),
          FrontWords.score(front.score().total()),
          degrees(front.pose().azimuth()),
          degrees(front.pose().tiltRight()),
          degrees(front.pose().tiltToward()));
    }
    page.table(table);
    page.inner("Degrees; below 0 to the left, or away from you. Scores are of 100.");
  }

  private static String degrees(double angle) {
    return Shown.fixed(Math.toDegrees(angle), 0);
  }

  private void front(int n, FrontsAnswer.Found found) {
    Front front = found.fronts().fronts().get(n);
    String planting = FrontWords.tilt(front.pose());
    page.heading(
        "Front "
            + (n + 1)
            + ": azimuth "
            + degrees(front.pose().azimuth())
            + " faces you, "
            + planting);
    if (n > 0 && !found.doubt().tells(found.fronts(), n)) {
      page.inner("As good as front 1, as far as measuring can tell.");
    }
    if (!front.top()) {
      page.inner("No top of its own: turned a little further, the score rises to a better front.");
    }
    reasons("For it:", FrontsPage.told(front, true));
    reasons("Against it:", FrontsPage.told(front, false));
    if (front.reasons().isEmpty()) {
      page.inner("Nothing that counts tells it from the others.");
    }
    String base = GroundWords.brief(ground.of(front.pose()).at(front.pose()));
    page.inner("Root base: " + base + ".");
  }

  private void reasons(String title, List<FrontReason> reasons) {
    if (reasons.isEmpty()) {
      return;
    }
    page.inner(title);
    for (FrontReason reason : reasons) {
      String sign = reason.isFor() ? "+" : "-";
      page.further(
          sign
              + FrontWords.score(Math.abs(reason.gain()))
              + "  "
              + FrontWords.reason(reason).replace('\u2212', '-'));
    }
  }

  /** Every measure of every front, with what it is worth. */
  private void measures(List<Front> fronts) {
    page.heading("What was measured, and what of 100 that is worth to the style");
    List<String> head = new ArrayList<>(List.of("measure", "weight"));
    for (int n = 1; n <= fronts.size(); n++) {
      head.add("front " + n);
    }
    TextTable table = new TextTable(1).row(head.toArray(String[]::new));
    for (FrontScore.Part part : fronts.get(0).score().parts()) {
      List<String> row = new ArrayList<>();
      row.add(FrontWords.name(part.measure()));
      row.add(Shown.plain(answer.asked().rules().rule(part.measure()).weight()));
      for (Front front : fronts) {
        FrontScore.Part one = front.score().part(part.measure()).orElseThrow();
        row.add(
            FrontWords.brief(one.measure(), one.value()).replace('\u2212', '-')
                + " "
                + worth(one.merit()));
      }
      table.row(row.toArray(String[]::new));
    }
    page.table(table);
  }

  private static String worth(double merit) {
    String text = Shown.fixed(100 * merit, 0);
    return "(" + " ".repeat(Math.max(0, 3 - text.length())) + text + ")";
  }

  private void explained(FrontScore score) {
    page.words(
        score.isSaid()
            ? "Score "
                + FrontWords.score(score.total())
                + " of 100: "
                + FrontWords.pose(score.pose())
                + "."
            : "No score can be said: nothing that counts can be measured on this tree.");
    title();
    page.heading("What was measured");
    TextTable table = new TextTable(2).row("measure", "value", "worth", "weight", "adds");
    for (FrontScore.Part part : score.parts()) {
      table.row(
          FrontWords.name(part.measure()),
          FrontWords.value(part.measure(), part.value()),
          Shown.fixed(100 * part.merit(), 0),
          Shown.plain(answer.asked().rules().rule(part.measure()).weight()),
          FrontWords.score(part.contribution()));
    }
    page.table(table);
    page.inner("Worth: of 100, what the style thinks of the value. Adds: to the score.");
    unsaid(score);
    GroundText.write(page, ground.of(score.pose()), score.pose());
  }

  private void unsaid(FrontScore score) {
    if (score.unsaid().isEmpty()) {
      return;
    }
    page.heading("Left out, for it cannot be said");
    FrontsWording.unsaid(score.unsaid()).forEach(page::point);
  }

  private void basis() {
    page.heading("What this rests on");
    page.point(
        "What is wanted of a front, and the weights, are common practice, no source; --weights"
            + " puts your own in their place.");
    page.point(
        "The tree is looked at square to the line of sight, "
            + FrontsWording.dress(answer.asked())
            + ".");
    answer
        .found()
        .filter(FrontsAnswer.Found::hasChoice)
        .ifPresent(
            found ->
                page.point(
                    "What measuring can tell: the tree measured again in thought, every point"
                        + " within about 3 mm and calipers as you read them."));
    for (Problem note : answer.asked().file().warnings()) {
      page.point(note.line());
    }
  }

  private void kept() {
    int number = answer.kept().choice();
    if (answer.kept().plan().isPresent()) {
      FrontPose pose = answer.found().orElseThrow().fronts().fronts().get(number - 1).pose();
      GroundText.write(page, ground.of(pose), pose);
    }
    AddToPlan.tell(page, "Front " + number, answer.kept().plan());
    answer.kept().picture().ifPresent(name -> page.heading("Picture of the fronts: " + name));
    answer.kept().roots().ifPresent(name -> page.heading("Picture of the root base: " + name));
    answer.kept().map().ifPresent(name -> page.heading("Map of the score: " + name));
  }
}
