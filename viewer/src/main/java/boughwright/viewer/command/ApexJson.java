// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Tree;
import boughwright.physics.apex.ApexOption;
import boughwright.physics.apex.ApexSearch;
import boughwright.physics.apex.Chop;
import boughwright.physics.apex.Leader;
import boughwright.physics.apex.TipStand;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.TrialSpecies;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;

/** What could become the top, for programs: millimetres, degrees, newtons, years. */
final class ApexJson {
  private final ApexAnswer answer;

  private ApexJson(ApexAnswer answer) {
    this.answer = answer;
  }

  static String of(ApexAnswer answer) {
    return JsonAnswer.text(new ApexJson(answer).write());
  }

  private ObjectNode write() {
    Tree tree = answer.file().document().tree();
    ObjectNode node = JsonAnswer.object();
    node.put("tree", tree.name());
    node.put("plan", answer.request().plan().id());
    node.put("most_risk", number(answer.request().wishes().mostRisk()));
    node.put("height_mm", number(1000 * answer.apexes().height()));
    node.put("base_caliper_mm", number(1000 * answer.apexes().baseCaliper()));
    YearlyRing ring = YearlyRing.of(tree.setting());
    ObjectNode growth = node.putObject("ring_mm_per_year");
    growth.put("low", number(1000 * ring.low()));
    growth.put("likely", number(1000 * ring.middle()));
    growth.put("high", number(1000 * ring.high()));
    node.put("ring_basis", ring.basis());
    node.put("believable_taper", number(ApexSearch.BELIEVABLE));
    node.set("choices", JsonAnswer.list(answer.apexes().options(), ApexJson::option));
    node.put("leaders_left_out", answer.apexes().leftOut());
    answer.apexes().chop().ifPresent(chop -> node.set("chop", chop(chop)));
    answer.told().ifPresent(told -> node.set("told", told(told)));
    answer.kept().ifPresent(plan -> node.put("added_to_plan", plan.id()));
    answer.picture().ifPresent(picture -> node.put("picture", picture));
    node.set("notes", ProblemJson.of(answer.file().warnings()));
    return node;
  }

  private static ObjectNode option(ApexOption option) {
    Leader leader = option.leader();
    ObjectNode node = JsonAnswer.object();
    node.put("segment", leader.tip().segment());
    node.put("from_segment", leader.first());
    node.put("state", option.state().name().toLowerCase(Locale.ROOT));
    node.put("best", option.best());
    node.set("now", stand(option.now()));
    option.bent().ifPresent(bent -> node.set("bent", bent(bent)));
    option
        .noBend()
        .ifPresent(
            no -> {
              node.put("why_not", no.why().found());
              node.put("remedy", no.why().remedy());
              ObjectNode refused = node.putObject("refused");
              new TreeMap<>(no.refused())
                  .forEach((why, count) -> refused.put(why.name().toLowerCase(Locale.ROOT), count));
            });
    node.put("height_mm", number(1000 * option.then().height()));
    leader
        .takeover()
        .ifPresent(
            step -> {
              ObjectNode taper = node.putObject("takeover");
              place(taper, step.at());
              taper.put("caliper_above_mm", number(1000 * step.thin()));
              taper.put("caliper_below_mm", number(1000 * step.thick()));
              taper.put("ratio", number(step.ratio()));
            });
    ArrayNode cuts = node.putArray("cuts");
    for (int n = 0; n < leader.cuts().size(); n++) {
      WoundClosure wound = option.wounds().get(n);
      ObjectNode cut = YearsJson.of(wound);
      place(cut, leader.cuts().get(n).cut());
      cuts.add(cut);
    }
    node.set("years_to_thicken", YearsJson.of(option.thickening()));
    node.set("years", YearsJson.of(option.years()));
    return node;
  }

  private static ObjectNode bent(ApexOption.Bent bent) {
    ObjectNode node = stand(bent.then());
    node.put("breaking", number(bent.breaking()));
    bent.trial()
        .risk()
        .ifPresent(
            risk -> {
              node.put("breaking_low", number(risk.breaking().low()));
              node.put("breaking_high", number(risk.breaking().high()));
            });
    bent.trial().verdict().ifPresent(verdict -> node.put("verdict", verdict.level().words()));
    ArrayNode lines = node.putArray("guy_lines");
    for (LineTrial line : bent.trial().lines()) {
      ObjectNode one = lines.addObject();
      one.put("id", line.id());
      one.put("tension_N", number(line.tension()));
      one.put("length_mm", number(1000 * line.length()));
      one.put("shortening_mm", number(1000 * line.shortening()));
    }
    return node;
  }

  private ObjectNode chop(Chop chop) {
    ObjectNode node = JsonAnswer.object();
    place(node, chop.at());
    node.put("best", answer.apexes().chopIsBest());
    node.put("caliper_mm", number(1000 * chop.caliper()));
    node.put("height_mm", number(1000 * chop.height()));
    node.set("wound", YearsJson.of(chop.wound()));
    node.set("years_to_thicken", YearsJson.of(chop.thickening()));
    node.set("years_to_grow", YearsJson.of(chop.growing()));
    node.set("years", YearsJson.of(chop.years()));
    return node;
  }

  private ObjectNode told(ApexAnswer.Told told) {
    ObjectNode node = JsonAnswer.object();
    node.put("choice", told.number());
    node.set("option", option(told.option()));
    told.trial().risk().ifPresent(risk -> node.set("risk", RiskJson.of(risk)));
    told.trial()
        .verdict()
        .ifPresent(
            verdict ->
                node.set(
                    "verdict",
                    VerdictJson.of(
                        verdict, TrialSpecies.limitsOf(answer.file().document().tree()))));
    node.set("hardware", HardwareJson.of(told.hardware()));
    told.course()
        .ifPresent(
            course ->
                node.set(
                    "course",
                    CourseJson.of(course, Optional.of(answer.request().trying().said().on()))));
    return node;
  }

  private static ObjectNode stand(TipStand stand) {
    ObjectNode node = JsonAnswer.object();
    node.put("beside_mm", number(1000 * stand.beside()));
    node.put("lean_deg", number(Math.toDegrees(stand.lean())));
    node.put("tip_height_mm", number(1000 * stand.height()));
    return node;
  }

  private static void place(ObjectNode node, Spot spot) {
    node.put("segment", spot.segment());
    node.put("along", number(spot.along()));
  }
}
