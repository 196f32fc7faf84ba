// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.modeller.design.front.Front;
import boughwright.modeller.design.front.FrontGrid;
import boughwright.modeller.design.front.FrontMap;
import boughwright.modeller.design.front.FrontReason;
import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.Planting;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/** Fronts for programs: degrees, scores and values from 0 to 1, each measure by its name. */
final class FrontsJson {
  /** The map is no more exact than this [1]. */
  private static final double ROUND = 1e5;

  private final FrontsAnswer answer;
  private final FrontsGround ground;

  private FrontsJson(FrontsAnswer answer) {
    this.answer = answer;
    ground = new FrontsGround(answer.asked());
  }

  static String of(FrontsAnswer answer) {
    return JsonAnswer.text(new FrontsJson(answer).write());
  }

  private ObjectNode write() {
    FrontsAnswer.Asked asked = answer.asked();
    ObjectNode node = JsonAnswer.object();
    node.put("tree", asked.file().document().tree().name());
    asked.plan().ifPresent(plan -> node.put("plan", plan.id()));
    node.put("style", asked.rules().style().name().toLowerCase(Locale.ROOT));
    node.put("eye_looks_down_deg", number(Math.toDegrees(asked.tree().eye().elevation())));
    ObjectNode weights = node.putObject("weights");
    for (FrontMeasure measure : FrontMeasure.values()) {
      weights.put(name(measure), number(asked.rules().rule(measure).weight()));
    }
    node.put("in_leaf", asked.tree().inLeaf());
    if (asked.tree().inLeaf()) {
      node.put("leaf_guessed", asked.file().document().tree().foliage().pads().isEmpty());
    }
    node.put("weights_source", "common practice, no source");
    answer.found().ifPresent(found -> found(node, found));
    answer.at().ifPresent(score -> node.set("at", score(score)));
    answer.kept().plan().ifPresent(plan -> node.put("added_to_plan", plan.id()));
    answer.kept().picture().ifPresent(picture -> node.put("picture", picture));
    answer.kept().roots().ifPresent(roots -> node.put("root_base_picture", roots));
    answer.kept().map().ifPresent(map -> node.put("map_picture", map));
    node.set("notes", ProblemJson.of(asked.file().warnings()));
    return node;
  }

  private static String name(FrontMeasure measure) {
    return measure.name().toLowerCase(Locale.ROOT);
  }

  private void found(ObjectNode node, FrontsAnswer.Found found) {
    List<Front> fronts = found.fronts().fronts();
    ObjectNode range = node.putObject("tilts");
    range.put("sideways_deg", number(Math.toDegrees(answer.asked().range().sideways())));
    range.put("forward_deg", number(Math.toDegrees(answer.asked().range().forward())));
    node.put("side_can_be_chosen", found.hasChoice());
    if (!fronts.isEmpty()) {
      node.put("score_best", number(fronts.get(0).score().total()));
      node.put("score_worst_side", number(found.fronts().worst().total()));
      node.put("score_measuring_tells", number(found.doubt().sides()));
    }
    ArrayNode list = node.putArray("fronts");
    for (int n = 0; n < fronts.size() && found.hasChoice(); n++) {
      Front front = fronts.get(n);
      ObjectNode one = score(front.score());
      one.put("top", front.top());
      one.put("told_from_first", n == 0 || found.doubt().tells(found.fronts(), n));
      one.set("reasons", reasons(front));
      list.add(one);
    }
    if (!fronts.isEmpty()) {
      node.set("map", map(found.fronts().map(), found.fronts().blur()));
    }
  }

  private ObjectNode score(FrontScore score) {
    ObjectNode node = JsonAnswer.object();
    FrontPose pose = score.pose();
    double round = Math.toDegrees(pose.azimuth());
    node.put("front_azimuth_deg", number(round));
    node.put("tilt_right_deg", number(Math.toDegrees(pose.tiltRight())));
    node.put("tilt_toward_deg", number(Math.toDegrees(pose.tiltToward())));
    Planting planting = pose.planting();
    if (planting.tilt() != 0) {
      ObjectNode plan = node.putObject("planting");
      plan.put("tilt_deg", number(Math.toDegrees(planting.tilt())));
      double toward = Math.toDegrees(planting.towardAzimuth());
      plan.put("toward_azimuth_deg", number(toward - 360 * Math.floor(toward / 360)));
    }
    if (score.isSaid()) {
      node.put("score", number(score.total()));
    }
    ArrayNode parts = node.putArray("measures");
    for (FrontScore.Part part : score.parts()) {
      ObjectNode one = parts.addObject();
      one.put("measure", name(part.measure()));
      if (part.measure() == FrontMeasure.APEX_LEAN) {
        one.put("value_deg", number(Math.toDegrees(part.value())));
      } else {
        one.put("value", number(part.value()));
      }
      one.put("merit", number(part.merit()));
      one.put("adds", number(part.contribution()));
    }
    ArrayNode unsaid = node.putArray("unsaid");
    score.unsaid().forEach(measure -> unsaid.add(name(measure)));
    node.set("ground", GroundJson.of(ground.of(pose), pose));
    return node;
  }

  private static ArrayNode reasons(Front front) {
    ArrayNode list = JsonAnswer.array();
    for (FrontReason reason : front.reasons()) {
      ObjectNode one = list.addObject();
      one.put("measure", name(reason.measure()));
      one.put("speaks", reason.isFor() ? "for" : "against");
      one.put("adds_more_than_others", number(reason.gain()));
    }
    return list;
  }

  /** The best score of each azimuth; of each tilt too where the map was asked for. */
  private ObjectNode map(FrontMap map, double blur) {
    ObjectNode node = JsonAnswer.object();
    node.put("azimuth_step_deg", number(Math.toDegrees(map.grid().azimuthStep())));
    node.put("within", number(blur));
    ArrayNode best = node.putArray("best_by_azimuth");
    for (int azimuth = 0; azimuth < map.grid().azimuths(); azimuth++) {
      best.add(number(map.best(azimuth)));
    }
    if (answer.kept().map().isPresent()) {
      FrontGrid grid = map.grid();
      node.set("by_tilt_toward", table(grid.azimuths(), grid.forwardCount(), map::forward));
      node.set("by_tilt_right", table(grid.azimuths(), grid.sidewaysCount(), map::sideways));
    }
    return node;
  }

  private interface Scores {
    double at(int azimuth, int tilt);
  }

  /** A row for each azimuth, from the furthest tilt away or to the left on. */
  private static ArrayNode table(int azimuths, int tilts, Scores scores) {
    ArrayNode rows = JsonAnswer.array();
    for (int azimuth = 0; azimuth < azimuths; azimuth++) {
      ArrayNode row = rows.addArray();
      for (int tilt = 0; tilt < tilts; tilt++) {
        row.add(number(Math.round(scores.at(azimuth, tilt) * ROUND) / ROUND));
      }
    }
    return rows;
  }
}
