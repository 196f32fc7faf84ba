// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.physics.choice.OpenWound;
import boughwright.physics.choice.PlanFigures;
import boughwright.physics.choice.Trace;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** Plans side by side, for programs. */
final class CompareJson {
  private final CompareAnswer answer;

  private CompareJson(CompareAnswer answer) {
    this.answer = answer;
  }

  static String of(CompareAnswer answer) {
    return JsonAnswer.text(new CompareJson(answer).write());
  }

  private ObjectNode write() {
    ObjectNode node = JsonAnswer.object();
    node.put("tree", answer.file().document().tree().name());
    node.set("plans", JsonAnswer.list(answer.plans(), this::plan));
    answer.picture().ifPresent(picture -> node.put("picture", picture));
    node.set("notes", ProblemJson.of(answer.file().warnings()));
    return node;
  }

  private ObjectNode plan(PlanFigures one) {
    TrialResult trial = one.tried().trial();
    ObjectNode node = JsonAnswer.object();
    node.put("plan", one.plan().id());
    node.put("holds", trial.outcome().holds());
    trial
        .verdict()
        .ifPresent(
            verdict ->
                node.set(
                    "verdict",
                    VerdictJson.of(
                        verdict, TrialSpecies.limitsOf(answer.file().document().tree()))));
    trial.risk().ifPresent(risk -> node.set("risk", RiskJson.of(risk)));
    trial.risk().ifPresent(risk -> node.set("breaking", RiskJson.odds(risk.breaking())));
    one.hardest()
        .ifPresent(
            line -> {
              ObjectNode hardest = node.putObject("hardest_pull");
              hardest.put("line", line.id());
              hardest.put("tension_N", number(line.tension()));
              hardest.put("shortening_mm", number(1000 * line.shortening()));
            });
    wounds(node, one);
    node.set("years_to_thicken", YearsJson.of(one.thickening()));
    one.stays().ifPresent(span -> node.set("stays_after_days", CourseJson.span(span)));
    if (one.height().isPresent()) {
      node.put("height_mm", number(1000 * one.height().getAsDouble()));
    }
    one.takeover()
        .ifPresent(
            step -> {
              ObjectNode taper = node.putObject("takeover");
              taper.put("segment", step.at().segment());
              taper.put("along", number(step.at().along()));
              taper.put("ratio", number(step.ratio()));
            });
    one.front()
        .ifPresent(
            front -> {
              ObjectNode score = node.putObject("front");
              score.put("azimuth_deg", number(Math.toDegrees(front.pose().azimuth())));
              score.put("tilt_deg", number(Math.toDegrees(front.pose().tilt())));
              score.put("score", number(front.total()));
            });
    node.set("can_be_undone", traces(one, true));
    node.set("cannot_be_undone", traces(one, false));
    return node;
  }

  private static void wounds(ObjectNode plan, PlanFigures one) {
    plan.set("wounds", JsonAnswer.list(one.wounds(), CompareJson::wound));
    plan.put("wound_area_mm2", number(1e6 * one.woundArea()));
    one.slowest()
        .ifPresent(
            slowest -> plan.set("years_to_close_slowest", YearsJson.of(slowest.closure().years())));
  }

  private static ObjectNode wound(OpenWound wound) {
    ObjectNode node = YearsJson.of(wound.closure());
    node.put("segment", wound.at().segment());
    node.put("along", number(wound.at().along()));
    node.put("cut_by_the_plan", wound.isNew());
    node.put("area_mm2", number(1e6 * wound.area()));
    return node;
  }

  private static ArrayNode traces(PlanFigures one, boolean undone) {
    ArrayNode list = JsonAnswer.array();
    for (Trace trace : one.traces()) {
      if (trace.kind().canBeUndone() == undone) {
        ObjectNode node = list.addObject();
        node.put("what", trace.kind().name().toLowerCase(Locale.ROOT));
        switch (trace.kind()) {
          case PLANTING -> node.put("tilt_deg", number(Math.toDegrees(trace.amount())));
          case SET -> node.put("part", number(trace.amount()));
          case BREAK -> node.put("p", number(trace.amount()));
          default -> node.put("count", (int) trace.amount());
        }
      }
    }
    return list;
  }
}
