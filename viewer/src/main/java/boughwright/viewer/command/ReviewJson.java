// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.modeller.design.review.AdvisedCut;
import boughwright.modeller.design.review.Aftermath;
import boughwright.modeller.design.review.Balance;
import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Limit;
import boughwright.modeller.design.review.Measured;
import boughwright.modeller.design.review.Remedy;
import boughwright.modeller.design.review.Review;
import boughwright.modeller.design.review.Where;
import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.RoundAngle;
import boughwright.physics.grow.WoundClosure;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** What a review found, for programs: millimetres, degrees, years. */
final class ReviewJson {
  private final ReviewAnswer answer;
  private final Review review;

  private ReviewJson(ReviewAnswer answer) {
    this.answer = answer;
    review = answer.review();
  }

  static String of(ReviewAnswer answer) {
    return JsonAnswer.text(new ReviewJson(answer).write());
  }

  private ObjectNode write() {
    ObjectNode node = JsonAnswer.object();
    node.put("tree", answer.file().document().tree().name());
    answer.plan().ifPresent(plan -> node.put("plan", plan.id()));
    answer
        .front()
        .ifPresent(pose -> node.put("front_azimuth_deg", number(Math.toDegrees(pose.azimuth()))));
    node.put("style", word(review.rules().style()));
    node.put("wood", word(review.rules().wood()));
    ObjectNode looked = node.putObject("looked_at");
    looked.set("trunk", JsonAnswer.words(review.lookedAt().trunk()));
    looked.put("branches", review.lookedAt().branches());
    looked.put("twigs", review.lookedAt().twigs());
    looked.put("others", review.lookedAt().others());
    ArrayNode faults = node.putArray("faults");
    for (Fault fault : review.faults()) {
      faults.add(fault(faults.size() + 1, fault));
    }
    ArrayNode left = node.putArray("not_judged");
    review
        .notJudged()
        .forEach(
            one -> left.addObject().put("kind", word(one.kind())).put("why", word(one.reason())));
    node.set("limits", limits());
    node.put("growth", answer.ring().basis());
    answer.kept().plan().ifPresent(plan -> node.put("added_to_plan", plan.id()));
    answer.kept().picture().ifPresent(picture -> node.put("picture", picture));
    node.set("notes", ProblemJson.of(answer.file().warnings()));
    return node;
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private ObjectNode limits() {
    ObjectNode node = JsonAnswer.object();
    for (Limit limit : Limit.values()) {
      ObjectNode one = node.putObject(LimitNames.json(limit));
      one.put("value", number(LimitNames.shown(limit, review.rules().value(limit))));
      one.put("origin", word(limit.origin()));
      one.put("note", limit.note());
    }
    return node;
  }

  private ObjectNode fault(int number, Fault fault) {
    ObjectNode node = JsonAnswer.object();
    node.put("number", number);
    node.put("kind", word(fault.kind()));
    node.set("segments", JsonAnswer.words(fault.segments()));
    node.set("where", where(fault.where()));
    ArrayNode measures = node.putArray("measures");
    fault.measures().forEach(measure -> measures.add(measured(measure)));
    node.put("weight", number(fault.weight()));
    ArrayNode options = node.putArray("options");
    fault.options().forEach(option -> options.add(option(option)));
    return node;
  }

  private static ObjectNode where(Where where) {
    ObjectNode node = JsonAnswer.object();
    place(node, where.spot());
    node.set("at_mm", point(where.at()));
    node.put("caliper_mm", number(1000 * where.caliper()));
    return node;
  }

  private static void place(ObjectNode node, Spot spot) {
    node.put("segment", spot.segment());
    node.put("along", number(spot.along()));
  }

  private static ArrayNode point(Point3 point) {
    ArrayNode node = JsonAnswer.array();
    node.add(number(1000 * point.x()));
    node.add(number(1000 * point.y()));
    node.add(number(1000 * point.z()));
    return node;
  }

  private static ObjectNode measured(Measured measure) {
    ObjectNode node = JsonAnswer.object();
    node.put("measure", LimitNames.json(measure.limit()));
    node.put("value", number(LimitNames.shown(measure.limit(), measure.value())));
    node.put("limit", number(LimitNames.shown(measure.limit(), measure.bound())));
    node.put("fault_if", measure.limit().isFaultBelow() ? "at_most" : "at_least");
    node.put("over", number(measure.over()));
    node.put("origin", word(measure.limit().origin()));
    return node;
  }

  private ObjectNode option(Remedy remedy) {
    ObjectNode node = JsonAnswer.object();
    node.put("action", word(remedy.action()));
    remedy.place().ifPresent(place -> node.set("where", where(place)));
    remedy.until().ifPresent(until -> node.put("until_caliper_mm", number(1000 * until)));
    remedy.aftermath().ifPresent(aftermath -> after(node, aftermath));
    return node;
  }

  private void after(ObjectNode node, Aftermath aftermath) {
    ArrayNode wounds = node.putArray("wounds");
    aftermath.cuts().forEach(cut -> wounds.add(wound(cut)));
    node.put("foliage_lost", number(aftermath.lost()));
    node.put("foliage_lost_most", number(aftermath.mostLost()));
    node.put("sessions", aftermath.sessions());
    aftermath.leftOnBranch().ifPresent(left -> node.put("foliage_left_on_branch", number(left)));
    ObjectNode balance = node.putObject("middle_of_wood");
    balance.set("before_mm", balance(aftermath.balance().before()));
    balance.set("after_mm", balance(aftermath.balance().after()));
    ObjectNode taper = node.putObject("taper_half_way");
    taper.put("before", number(aftermath.taper().before()));
    taper.put("after", number(aftermath.taper().after()));
  }

  private static ObjectNode balance(Balance balance) {
    ObjectNode node = JsonAnswer.object();
    node.put("right", number(1000 * balance.right()));
    node.put("behind", number(1000 * balance.behind()));
    return node;
  }

  private ObjectNode wound(AdvisedCut cut) {
    CutFace face = cut.face();
    ObjectNode node = JsonAnswer.object();
    place(node.putObject("cut"), face.cut());
    place(node.putObject("on"), face.on());
    node.put("across", face.across());
    if (!face.across()) {
      double round = RoundAngle.of(face.lengthwise(), face.normal().vector());
      node.put("round_deg", number(Math.toDegrees(round)));
      node.put("share_of_caliper", number(cut.share()));
    }
    node.put("width_mm", number(1000 * cut.width()));
    node.put("height_mm", number(1000 * cut.height()));
    node.put("cut_angle_deg", number(Math.toDegrees(cut.advice().angle())));
    node.put("stub_mm", number(1000 * cut.advice().stub()));
    node.put("hollow_mm", number(1000 * cut.advice().depth()));
    WoundClosure closure = answer.closure(cut);
    node.set("years_to_close", YearsJson.of(closure.years()));
    node.put("late", closure.isLate());
    return node;
  }
}
