// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;
import static boughwright.viewer.command.JsonAnswer.point;

import boughwright.modeller.design.ground.Balance;
import boughwright.modeller.design.ground.ContainerFit;
import boughwright.modeller.design.ground.Ground;
import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.RootBase;
import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.design.ground.RootCut;
import boughwright.modeller.design.ground.RootLevel;
import boughwright.modeller.design.ground.RootMass;
import boughwright.modeller.design.ground.RootPlane;
import boughwright.modeller.design.ground.TieDown;
import boughwright.modeller.design.ground.TiltSteps;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.Planting;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The root base for one front, for programs. Points are [right, away, up] as the viewer sees them,
 * from the middle of the trunk base.
 */
final class GroundJson {
  private final GroundAnswer answer;
  private final RootCare care;

  private GroundJson(GroundAnswer answer, RootCare care) {
    this.answer = answer;
    this.care = care;
  }

  static ObjectNode of(Ground ground, FrontPose pose) {
    return new GroundJson(ground.at(pose), ground.care()).write();
  }

  private ObjectNode write() {
    ObjectNode node = JsonAnswer.object();
    node.put("trunk_mm", number(1000 * answer.trunk()));
    answer.base().ifPresent(base -> node.set("root_base", base(base)));
    answer.roots().ifPresent(roots -> node.set("root_mass", roots(roots)));
    answer.fit().ifPresent(fit -> node.set("container", container(fit)));
    node.set("balance", balance(answer.balance()));
    answer.ties().ifPresent(ties -> node.set("tie_down", ties(ties)));
    ArrayNode unsaid = node.putArray("cannot_be_said");
    answer.unsaid().stream()
        .sorted()
        .forEach(what -> unsaid.add(what.name().toLowerCase(Locale.ROOT)));
    return node;
  }

  private static ObjectNode base(RootBase base) {
    ObjectNode node = JsonAnswer.object();
    node.put("roots", base.levels().size());
    if (base.levels().size() > 1) {
      node.put("level", base.isLevel());
      node.put("uneven_mm", number(1000 * base.unevenness()));
      node.put("tolerance_mm", number(1000 * base.tolerance()));
    }
    node.put("mean_height_mm", number(1000 * base.middle()));
    node.put("deepest", base.deepest().root().id());
    node.put("widest_gap_deg", number(Math.toDegrees(base.extent().gap())));
    node.put("spread_mm", number(1000 * base.extent().widest()));
    node.put("spread_seen_mm", number(1000 * base.extent().seen()));
    node.put("usual_spread_mm", number(1000 * RootBase.SPREAD * base.trunk()));
    node.put("raise_soil_to_cover_mm", number(1000 * base.raiseToCover()));
    node.put("lower_soil_to_show_mm", number(1000 * base.lowerToShow()));
    base.off().ifPresent(off -> node.put("off_level_deg", number(Math.toDegrees(off))));
    base.plane().ifPresent(plane -> node.set("plane", plane(plane)));
    node.set("levels", JsonAnswer.list(base.levels(), GroundJson::level));
    return node;
  }

  private static ObjectNode plane(RootPlane plane) {
    ObjectNode node = JsonAnswer.object();
    node.put("tilt_deg", number(Math.toDegrees(plane.tilt())));
    node.put("falls_toward_azimuth_deg", number(azimuth(plane.fallsToward())));
    node.put("rms_mm", number(1000 * plane.unevenness()));
    Planting best = plane.levelling();
    ObjectNode levelling = node.putObject("levelled_by");
    levelling.put("tilt_deg", number(Math.toDegrees(best.tilt())));
    levelling.put("toward_azimuth_deg", number(azimuth(best.towardAzimuth())));
    return node;
  }

  private static double azimuth(double angle) {
    double degrees = Math.toDegrees(angle) % 360;
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static ObjectNode level(RootLevel level) {
    ObjectNode node = JsonAnswer.object();
    node.put("root", level.root().id());
    node.put("caliper_mm", number(1000 * level.root().caliper()));
    node.put("state", level.then().state().name().toLowerCase(Locale.ROOT));
    node.put("state_as_measured", level.now().state().name().toLowerCase(Locale.ROOT));
    node.put("middle_mm", number(1000 * level.then().axis()));
    node.put("upper_mm", number(1000 * level.then().upper()));
    node.put("under_mm", number(1000 * level.then().under()));
    node.put("rise_mm", number(1000 * level.rise()));
    node.set("line_mm", JsonAnswer.list(level.line(), JsonAnswer::point));
    return node;
  }

  private ObjectNode roots(RootMass roots) {
    ObjectNode node = JsonAnswer.object();
    node.put("depth_as_measured_mm", number(1000 * roots.depth().now()));
    node.put("depth_mm", number(1000 * roots.depth().then()));
    node.put("depth_after_cuts_mm", number(1000 * roots.depth().left()));
    node.set("middle_mm", point(roots.centre()));
    node.set("cuts", JsonAnswer.list(roots.loss().cuts(), cut -> cut(cut, roots.loss().whole())));
    ArrayNode lifted = node.putArray("lifted");
    roots.loss().lifted().forEach(root -> lifted.add(root.id()));
    node.put("share_lost", number(roots.loss().share()));
    node.put("share_cut", number(roots.loss().cutShare()));
    node.put("share_allowed", number(care.careful()));
    node.put("share_allowed_at_most", number(care.most()));
    TiltSteps steps = roots.steps();
    ArrayNode tilts = node.putArray("repotting_tilts_deg");
    steps.tilts().forEach(tilt -> tilts.add(number(Math.toDegrees(tilt))));
    ArrayNode years = node.putArray("years_between_repottings");
    years.add(care.fewestYears()).add(care.mostYears());
    steps
        .follow()
        .ifPresent(
            follow -> {
              ObjectNode bend = node.putObject("bend_instead");
              bend.put("root", follow.root().id());
              bend.put("angle_deg", number(Math.toDegrees(follow.angle())));
              bend.put("strain", number(follow.strain()));
              bend.put("too_thick_for_fingers", follow.tooThick());
              if (!follow.tooThick() && !follow.hopeless()) {
                bend.put("repottings", follow.steps());
              }
            });
    return node;
  }

  private static ObjectNode cut(RootCut cut, double whole) {
    ObjectNode node = JsonAnswer.object();
    node.put("root", cut.root().id());
    node.put("segment", cut.segment());
    node.put("along", number(cut.along()));
    node.put("from_trunk_mm", number(1000 * cut.fromTrunk()));
    node.put("caliper_mm", number(1000 * cut.caliper()));
    node.put("length_off_mm", number(1000 * cut.length()));
    node.put("share", number(cut.volume() / whole));
    return node;
  }

  private static ObjectNode container(ContainerFit fit) {
    ObjectNode node = JsonAnswer.object();
    node.put("holds_trunk", fit.holdsTrunk());
    node.put("length_mm", number(1000 * fit.container().size().length()));
    node.put("width_mm", number(1000 * fit.container().size().width()));
    node.put("depth_mm", number(1000 * fit.container().size().depth()));
    node.put("soil_depth_mm", number(1000 * fit.soilDepth()));
    node.put("tree_height_mm", number(1000 * fit.height()));
    node.put("usual_length_mm", number(1000 * fit.usualLength()));
    node.put("usual_depth_mm", number(1000 * fit.usualDepth()));
    return node;
  }

  private static ObjectNode balance(Balance balance) {
    ObjectNode node = JsonAnswer.object();
    node.set("above_roots", body(balance.above()));
    node.set("tree", body(balance.tree()));
    balance.whole().ifPresent(whole -> node.set("with_soil_and_container", body(whole)));
    balance.margin().ifPresent(margin -> node.put("margin_mm", number(1000 * margin)));
    balance.tips().ifPresent(tips -> node.put("tips_at_deg", number(Math.toDegrees(tips))));
    return node;
  }

  private static ObjectNode body(Balance.Body body) {
    ObjectNode node = JsonAnswer.object();
    node.put("mass_kg", number(body.mass()));
    node.set("centre_mm", point(body.centre()));
    return node;
  }

  private ObjectNode ties(TieDown down) {
    ObjectNode node = JsonAnswer.object();
    node.put("push_N", number(down.push().force()));
    node.put("push_height_mm", number(1000 * down.push().height()));
    node.put("rocks_untied_at_N", number(down.rocksAt()));
    node.put("most_N", number(TieDown.MOST));
    ArrayNode ties = node.putArray("ties");
    for (int count = 2; count <= 4; count++) {
      ObjectNode one = ties.addObject();
      one.put("count", count);
      one.set(
          "places_mm", JsonAnswer.list(TieDown.round(count, answer.trunk()), JsonAnswer::point));
      OptionalDouble tension = down.tension(TieDown.round(count, answer.trunk()));
      one.put("holds", tension.isPresent());
      tension.ifPresent(newtons -> one.put("tension_N", number(newtons)));
    }
    return node;
  }
}
