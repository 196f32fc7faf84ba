// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.direction;
import static boughwright.viewer.command.JsonAnswer.number;
import static boughwright.viewer.command.JsonAnswer.point;

import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.Spot;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.Target;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.TrialSpecies;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Which lines bring a place where it is wanted, for programs: millimetres, degrees, newtons. */
final class ReachJson {
  private final ReachAnswer answer;

  private ReachJson(ReachAnswer answer) {
    this.answer = answer;
  }

  static String of(ReachAnswer answer) {
    return JsonAnswer.text(new ReachJson(answer).write());
  }

  private ObjectNode write() {
    ObjectNode node = JsonAnswer.object();
    node.put("tree", answer.file().document().tree().name());
    node.set("target", target(answer.target()));
    node.put("most_risk", number(answer.mostRisk()));
    node.put("start_miss_mm", number(1000 * answer.reached().startMiss()));
    node.put("limb_length_mm", number(1000 * answer.reached().limbLength()));
    node.set("choices", JsonAnswer.list(answer.drawn(), this::choice));
    ObjectNode refused = node.putObject("refused");
    Map<String, Integer> sorted = new TreeMap<>();
    answer
        .reached()
        .refused()
        .forEach((why, count) -> sorted.put(why.name().toLowerCase(Locale.ROOT), count));
    sorted.forEach(refused::put);
    answer.reached().noCoil().ifPresent(why -> node.put("no_coil", why.found()));
    answer
        .reached()
        .missingAnchor()
        .ifPresent(
            anchor -> {
              ObjectNode missing = node.putObject("missing_anchor");
              place(missing, anchor.place().spot());
              missing.put("from_union_mm", number(1000 * anchor.place().fromUnion()));
              missing.set("at_mm", point(anchor.at()));
              missing.put("miss_mm", number(1000 * anchor.miss()));
            });
    answer.kept().plan().ifPresent(plan -> node.put("added_to_plan", plan.id()));
    answer.kept().picture().ifPresent(picture -> node.put("picture", picture));
    node.set("notes", ProblemJson.of(answer.file().warnings()));
    return node;
  }

  private static ObjectNode target(Target target) {
    ObjectNode node = JsonAnswer.object();
    place(node, target.spot());
    if (target instanceof Target.Point point) {
      node.set("to_mm", point(point.point()));
    } else if (target instanceof Target.Heading heading) {
      node.set("direction", direction(heading.direction()));
      node.put("radian_counts_as_mm", number(1000 * heading.arm()));
    } else if (target instanceof Target.Upright upright) {
      node.put("upright", true);
      node.set("over_mm", point(upright.base()));
      node.set("up", direction(upright.up()));
      node.put("radian_counts_as_mm", number(1000 * upright.arm()));
    }
    return node;
  }

  private ObjectNode choice(ReachAnswer.Drawn drawn) {
    Choice choice = drawn.choice();
    ObjectNode node = JsonAnswer.object();
    node.put("why", choice.why().name().toLowerCase(Locale.ROOT));
    node.put("miss_mm", number(1000 * choice.miss()));
    node.put("eased", choice.isEased());
    if (choice.isEased()) {
      node.put("nearest_mm", number(1000 * choice.nearest()));
    }
    node.set("comes_to_mm", point(choice.comesTo()));
    node.set("heads", direction(choice.heads()));
    ObjectNode guess = node.putObject("risk_guess");
    guess.put("breaking", number(choice.risk().breaking()));
    guess.put("kink", number(choice.risk().kink()));
    drawn.trial().risk().ifPresent(risk -> node.put("breaking", number(risk.breaking().p())));
    drawn.trial().risk().ifPresent(risk -> node.set("risk", RiskJson.of(risk)));
    drawn
        .trial()
        .verdict()
        .ifPresent(
            verdict ->
                node.set(
                    "verdict",
                    VerdictJson.of(
                        verdict, TrialSpecies.limitsOf(answer.file().document().tree()))));
    ArrayNode lines = node.putArray("guy_lines");
    for (int n = 0; n < choice.lines().size(); n++) {
      lines.add(line(choice, n, drawn));
    }
    choice.bend().ifPresent(bend -> bend(node, bend, choice.lines().size()));
    node.set("hardware", HardwareJson.of(drawn.hardware()));
    if (!drawn.coils().isEmpty()) {
      node.set("coils", CoilJson.of(drawn.coils()));
    }
    drawn
        .course()
        .ifPresent(c -> node.set("course", CourseJson.of(c, Optional.of(answer.start()))));
    node.set("warnings", JsonAnswer.words(drawn.trial().warnings()));
    return node;
  }

  private static void bend(ObjectNode choice, Choice.Bend bend, int lines) {
    ObjectNode node = choice.putObject("coil");
    Coil coil = bend.coil();
    place(node.putObject("from"), coil.from());
    place(node.putObject("to"), coil.to());
    node.put("metal", coil.metal().word());
    node.put("gauge_mm", number(1000 * coil.gauge()));
    node.put("strands", coil.strands());
    node.put("angle_to_axis_deg", number(Math.toDegrees(coil.angleToAxis())));
    node.put("hand", coil.hand() == Hand.RIGHT ? "right" : "left");
    node.put("cut_mm", number(1000 * bend.work().cut()));
    node.put("anchorage", bend.work().anchorage());
    ObjectNode hand = choice.putObject("hand_bend");
    place(hand, bend.hand().at());
    hand.put("from_union_mm", number(1000 * bend.place().fromUnion()));
    hand.set("direction", direction(bend.hand().direction()));
    hand.put("move_mm", number(1000 * bend.hand().move()));
    hand.put("force_N", number(bend.force()));
    choice.put("lines_and_coil", lines + 1);
  }

  private static ObjectNode line(Choice choice, int n, ReachAnswer.Drawn drawn) {
    Choice.Line line = choice.lines().get(n);
    String id = choice.proposal().guyLines().get(n).id();
    LineTrial trial =
        drawn.borne().lines().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    ObjectNode node = JsonAnswer.object();
    node.put("id", id);
    place(node, line.tie().place().spot());
    anchor(node, line.tie().anchor());
    node.put("shorten_mm", number(1000 * line.tie().shortening()));
    node.put("from_union_mm", number(1000 * line.tie().place().fromUnion()));
    node.put("pad_side", line.padSide());
    node.put("tension_N", number(trial.tension()));
    node.put("length_mm", number(1000 * trial.length()));
    node.put("angle_to_branch_deg", number(Math.toDegrees(line.angle())));
    node.put("stop_pad", line.mustStopPad());
    return node;
  }

  private static void anchor(ObjectNode node, AnchorPlace anchor) {
    node.put("anchor_sort", anchor.sort().word());
    if (anchor.anchor() instanceof Anchor.OnTree tree) {
      place(node.putObject("anchor"), tree.spot());
    } else {
      node.put("anchor_name", anchor.name());
      node.set("anchor_mm", point(anchor.at()));
    }
  }

  private static void place(ObjectNode node, Spot spot) {
    node.put("segment", spot.segment());
    node.put("along", number(spot.along()));
  }
}
