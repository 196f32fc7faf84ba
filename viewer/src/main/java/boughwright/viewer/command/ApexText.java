// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.plan.Spot;
import boughwright.physics.apex.ApexOption;
import boughwright.physics.apex.ApexSearch;
import boughwright.physics.apex.Apexes;
import boughwright.physics.apex.Chop;
import boughwright.physics.apex.TipStand;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.reach.Choice;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Odds;
import boughwright.viewer.scene.NoBendWords;
import boughwright.viewer.scene.YearsWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What could become the top, for the person at the bench. */
final class ApexText {
  private final ApexAnswer answer;
  private final Apexes apexes;
  private final TextPage page = new TextPage();

  private ApexText(ApexAnswer answer) {
    this.answer = answer;
    apexes = answer.apexes();
  }

  static String of(ApexAnswer answer) {
    return new ApexText(answer).write();
  }

  private String write() {
    page.words(opening());
    page.title(answer.file().document().tree().name() + ", its top");
    page.inner(
        "Now it is "
            + Shown.fixed(1000 * apexes.height(), 0)
            + " mm high; the trunk base is "
            + Shown.fixed(1000 * apexes.baseCaliper(), 0)
            + " mm thick.");
    if (!apexes.options().isEmpty()) {
      bends();
      leaves();
      noBend();
    }
    apexes.chop().ifPresent(this::chop);
    answer.told().ifPresent(this::told);
    basis();
    if (answer.told().isPresent()) {
      TrialText.cautions(page);
    }
    kept();
    return page.toString();
  }

  private String opening() {
    if (apexes.options().isEmpty()) {
      return "No shoot of this tree is long and thick enough to become its top"
          + (apexes.chop().isPresent() ? "; a new leader would have to be grown." : ".");
    }
    ApexOption first = apexes.options().get(0);
    String leader = first.leader().tip().segment();
    String years = years(first);
    return switch (first.state()) {
      case STANDS -> leader + " stands over the root base as it is." + years;
      case REACHES ->
          leader + " can be brought over the root base. Breaking: " + breaking(first) + "." + years;
      case NEARER ->
          "No leader comes over the root base within a risk of "
              + allowed()
              + ". The nearest is "
              + leader
              + ": "
              + stand(first.then())
              + ".";
      case CANNOT ->
          "No leader can be brought nearer to the root base. The nearest is "
              + leader
              + " as it stands: "
              + stand(first.now())
              + ".";
    };
  }

  private static String years(ApexOption option) {
    return option.years().high() == 0
        ? ""
        : " Until wounds and taper look right: " + YearsWords.of(option.years()) + ".";
  }

  private String allowed() {
    return Odds.words(answer.request().wishes().mostRisk()).replaceFirst("^about ", "");
  }

  private static String stand(TipStand stand) {
    return Shown.fixed(1000 * stand.beside(), 0)
        + " mm beside it, the tip leaning "
        + Shown.fixed(Math.toDegrees(stand.lean()), 0)
        + " degrees";
  }

  private static String breaking(ApexOption option) {
    return option
        .bent()
        .map(bent -> bent.breaking() > 0 ? Odds.words(bent.breaking()) : "-")
        .orElse("-");
  }

  private void bends() {
    page.heading("Leaders, and how near a bend brings them");
    TextTable table =
        new TextTable(3)
            .row("choice", "leader", "over the root base", "beside", "lean", "breaking", "pull");
    for (int n = 0; n < apexes.options().size(); n++) {
      ApexOption option = apexes.options().get(n);
      table.row(
          number(n),
          option.leader().tip().segment(),
          state(option.state()),
          Shown.fixed(1000 * option.then().beside(), 0) + " mm",
          Shown.fixed(Math.toDegrees(option.then().lean()), 0) + " deg",
          breaking(option),
          option.bent().map(bent -> Shown.newtons(bent.pull())).orElse("-"));
    }
    page.table(table);
  }

  private String number(int n) {
    return (n + 1) + (apexes.options().get(n).best() ? " *" : "");
  }

  private static String state(ApexOption.State state) {
    return switch (state) {
      case STANDS -> "stands there";
      case REACHES -> "can be bent there";
      case NEARER -> "comes nearer";
      case CANNOT -> "no bend helps";
    };
  }

  private void leaves() {
    page.heading("What each leaves, and the years it takes");
    TextTable table =
        new TextTable(2)
            .row("choice", "leader", "step", "height", "wound", "wound closed", "thick enough");
    for (int n = 0; n < apexes.options().size(); n++) {
      ApexOption option = apexes.options().get(n);
      table.row(
          number(n),
          option.leader().tip().segment(),
          option.leader().takeover().map(step -> Shown.fixed(step.ratio(), 2)).orElse("-"),
          Shown.fixed(1000 * option.then().height(), 0) + " mm",
          option.widest().map(one -> Shown.fixed(1000 * one.width(), 0) + " mm").orElse("-"),
          option.widest().map(one -> YearsWords.brief(one.years())).orElse("-"),
          YearsWords.brief(option.thickening()));
    }
    page.table(table);
    page.inner(
        "* No other is as good in all of: how near, breaking, step, wound, years, and better in"
            + " one.");
    page.inner(
        "Step: caliper of the leader over that of the wood it takes over from. Wound: the widest"
            + " cut. Thick enough: a step of "
            + Shown.plain(ApexSearch.BELIEVABLE)
            + ".");
    if (apexes.leftOut() > 0) {
      page.inner(
          apexes.leftOut()
              + " thinner "
              + (apexes.leftOut() == 1 ? "leader was" : "leaders were")
              + " left out; --leaders N bends more.");
    }
  }

  private void noBend() {
    Map<String, List<String>> leaders = new LinkedHashMap<>();
    for (ApexOption option : apexes.options()) {
      option
          .noBend()
          .ifPresent(
              why ->
                  leaders
                      .computeIfAbsent(NoBendWords.of(why), words -> new ArrayList<>())
                      .add(option.leader().tip().segment()));
    }
    if (!leaders.isEmpty()) {
      page.heading("Where no bend helps");
      leaders.forEach((why, names) -> page.point(String.join(", ", names) + ": " + why + "."));
      page.inner("Lines alone were tried, to what there is; the verb reach tells more of each.");
    }
  }

  private void chop(Chop chop) {
    page.heading(
        "Or: chop the trunk to a bud and grow a new leader" + (apexes.chopIsBest() ? " *" : ""));
    page.inner(
        "Chop "
            + place(chop.at())
            + ", where it is "
            + Shown.fixed(1000 * chop.caliper(), 0)
            + " mm thick. The wound "
            + YearsWords.closes(chop.wound())
            + "; the new leader is thick enough "
            + YearsWords.when(chop.thickening())
            + " and brings the tree to "
            + Shown.fixed(1000 * chop.height(), 0)
            + " mm "
            + YearsWords.when(chop.growing())
            + ". All of it: "
            + YearsWords.of(chop.years())
            + ".");
    page.inner(
        "A third of the final height, and a final height of six base calipers: common practice,"
            + " no source. No bud is promised there.");
  }

  private static String place(Spot spot) {
    return spot.segment() + " at " + Shown.fixed(100 * spot.along(), 0) + " % of its length";
  }

  private void told(ApexAnswer.Told told) {
    ApexOption option = told.option();
    String verdict =
        told.trial().verdict().map(one -> "; verdict: " + one.level().words()).orElse("");
    page.heading("Choice " + told.number() + ", " + option.leader().tip().segment() + verdict);
    List<CutFace> cuts = option.leader().cuts();
    for (int n = 0; n < cuts.size(); n++) {
      WoundClosure wound = option.wounds().get(n);
      page.inner(
          "Cut "
              + place(cuts.get(n).cut())
              + ": a wound "
              + Shown.fixed(1000 * wound.width(), 0)
              + " mm wide that "
              + YearsWords.closes(wound)
              + ".");
    }
    if (cuts.isEmpty()) {
      page.inner("Nothing is cut.");
    }
    option
        .bent()
        .ifPresent(
            bent -> {
              for (Choice.Line line : bent.choice().lines()) {
                line(bent.choice(), line, told.trial().lines());
              }
            });
    if (option.bent().isEmpty()) {
      page.inner("Nothing is bent.");
    }
    told.trial().verdict().ifPresent(judged -> page.inner("Why: " + judged.reason()));
    HardwareText.write(page, told.hardware(), false);
    told.course()
        .ifPresent(
            course ->
                CourseText.write(
                    page, course, Optional.of(answer.request().trying().said().on()), false));
  }

  private void line(Choice choice, Choice.Line line, List<LineTrial> trials) {
    String id = choice.proposal().guyLines().get(choice.lines().indexOf(line)).id();
    LineTrial trial = trials.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    page.inner(
        id
            + ": from "
            + line.tie().place().spot().segment()
            + ", "
            + Shown.fixed(1000 * line.tie().place().fromUnion(), 0)
            + " mm from the union of its limb, to "
            + ReachWords.anchor(line.tie().anchor())
            + ". Tighten by "
            + Shown.millimetres(trial.shortening())
            + ", to "
            + Shown.millimetres(trial.length())
            + "; it then pulls "
            + Shown.newtons(trial.tension())
            + ".");
  }

  private void basis() {
    page.heading("What the numbers rest on");
    page.point(
        "Over the root base: the tip within half the base caliper of its middle, seen along the"
            + " vertical at the planting angle, its last stretch within 15 degrees of upright"
            + " (common practice, no source).");
    page.point("Growth: " + YearlyRing.of(answer.request().tree().setting()).basis() + ".");
    page.point(
        "Wounds close by 1.3 (1.0 to 2.0) times the ring from each side; that callus outgrows the"
            + " ring is measured, the figure is an assumption. Closed after more than three years"
            + " they no longer keep decay out (Harris, in Perry and Hickman 1987).");
    page.point(
        "A step of 0.6 is the least that looks grown: common practice, no source. Leader and wood"
            + " below lay on the same cross-section.");
    page.point(
        "What makes way is cut before the bend is tried, so nothing is tied to it. Breaking is"
            + " drawn. Each leader by the line that pulls least of those that bring it over the"
            + " base, or that comes nearest: the verb reach shows others.");
  }

  private void kept() {
    AddToPlan.tell(page, "It", answer.kept());
    answer.picture().ifPresent(picture -> page.heading("Picture: " + picture));
  }
}
