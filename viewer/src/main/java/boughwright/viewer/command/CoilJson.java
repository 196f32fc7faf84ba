// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.modeller.plan.Hand;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.CoilWork;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.WireChoice;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Coils for programs: millimetres, newtons, degrees; parts are of 1. */
final class CoilJson {
  private CoilJson() {}

  /** What coils hold, one object for each proposal with coils. */
  static ArrayNode of(List<CoilHold> holds) {
    return JsonAnswer.list(holds, CoilJson::hold);
  }

  private static ObjectNode hold(CoilHold hold) {
    ObjectNode node = JsonAnswer.object();
    node.put("proposal", hold.proposal());
    node.put("segment", hold.segment());
    node.put("forced_mm", number(1000 * hold.forced()));
    node.put("held_mm", number(1000 * hold.held()));
    node.put("unwired_mm", number(1000 * hold.unwired()));
    node.set("kept", RiskJson.range(hold.kept()));
    node.put("holds", hold.holds());
    node.put("strength", number(hold.strength()));
    node.set("hand_bends", hands(hold.hands()));
    hold.overbend()
        .ifPresent(
            over -> {
              ObjectNode further = node.putObject("overbend");
              further.put("factor", number(over.factor()));
              further.put("strain_over_plan", number(over.strain()));
              further.set("hand_bends", hands(over.hands()));
            });
    node.set("coils", JsonAnswer.list(hold.coils(), CoilJson::work));
    return node;
  }

  private static ArrayNode hands(List<CoilHold.HandPull> pulls) {
    ArrayNode nodes = JsonAnswer.array();
    for (CoilHold.HandPull pull : pulls) {
      ObjectNode node = nodes.addObject();
      node.put("id", pull.id());
      node.put("move_mm", number(1000 * pull.move()));
      node.put("force_N", number(pull.force()));
    }
    return nodes;
  }

  private static ObjectNode work(CoilWork work) {
    ObjectNode node = JsonAnswer.object();
    node.put("from", work.coil().from().segment());
    node.put("to", work.coil().to().segment());
    node.put("metal", work.coil().metal().word());
    node.put("gauge_mm", number(1000 * work.coil().gauge()));
    node.put("strands", work.coil().strands());
    node.put("length_mm", number(1000 * work.length()));
    node.put("turns", number(work.turns()));
    node.put("pitch_start_mm", number(1000 * work.pitch().atStart()));
    node.put("pitch_end_mm", number(1000 * work.pitch().atEnd()));
    node.put("gap_mm", number(1000 * work.gap()));
    node.put("cut_mm", number(1000 * work.cut()));
    node.put("anchored", work.anchored());
    node.put("anchorage", work.anchorage());
    node.put("twist_deg", number(Math.toDegrees(work.twist())));
    work.tightens().ifPresent(hand -> node.put("tightens", word(hand)));
    node.put("wrong_hand", work.isWrongHand());
    work.outside().ifPresent(place -> node.set("outside", place(place)));
    return node;
  }

  private static String word(Hand hand) {
    return hand == Hand.RIGHT ? "right" : "left";
  }

  private static ObjectNode place(FailurePlace place) {
    ObjectNode node = JsonAnswer.object();
    node.put("segment", place.segment());
    node.put("along", number(place.along()));
    place.fromUnion().ifPresent(from -> node.put("from_union_mm", number(1000 * from)));
    node.put("round_deg", number(Math.toDegrees(place.round())));
    node.put("side", place.side());
    return node;
  }

  /** Which wire is strong enough, one object for each proposal bent by hand. */
  static ArrayNode choices(List<WireChoice> choices) {
    return JsonAnswer.list(choices, CoilJson::choice);
  }

  /** Which wire is strong enough for one bend. */
  static ObjectNode choice(WireChoice choice) {
    ObjectNode node = JsonAnswer.object();
    node.put("proposal", choice.proposal());
    node.put("segment", choice.segment());
    node.put("move_mm", number(1000 * choice.move()));
    node.put("kept_without_wire", number(choice.alone()));
    node.put("angle_to_axis_deg", number(Math.toDegrees(choice.angle())));
    node.put("one_third_mm", number(1000 * choice.byRule()));
    ArrayNode rows = node.putArray("wires");
    for (WireChoice.Row row : choice.rows()) {
      ObjectNode wire = rows.addObject();
      wire.put("metal", row.metal().word());
      wire.put("strands", row.strands());
      row.gauge().ifPresent(gauge -> wire.put("gauge_mm", number(1000 * gauge)));
      wire.put("strength", number(row.strength()));
      row.hand().ifPresent(hand -> wire.put("bend_to_mm", number(1000 * hand)));
    }
    return node;
  }
}
