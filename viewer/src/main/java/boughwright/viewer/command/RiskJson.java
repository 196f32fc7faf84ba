// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.InputShare;
import boughwright.physics.trial.LimitSample;
import boughwright.physics.trial.Probability;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.Risk;
import boughwright.viewer.scene.FailureWords;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.TreeMap;

/** The risk of a bend for programs: strains and other demands as parts of one. */
final class RiskJson {
  private RiskJson() {}

  static ObjectNode of(Risk risk) {
    ObjectNode node = JsonAnswer.object();
    risk.failures()
        .forEach(failure -> node.set(FailureWords.name(failure.mode()), failure(failure)));
    node.put("no_pose", number(risk.noPose()));
    ObjectNode tensions = node.putObject("tensions_N");
    new TreeMap<>(risk.tensions()).forEach((line, range) -> tensions.set(line, range(range)));
    node.set("sensitivity", JsonAnswer.list(risk.shares(), RiskJson::share));
    node.set("limits_along", JsonAnswer.list(risk.limits(), RiskJson::limit));
    node.put("samples", risk.samples());
    node.put("seed", risk.seed());
    return node;
  }

  static ObjectNode odds(Probability odds) {
    return JsonAnswer.object()
        .put("p", number(odds.p()))
        .put("low", number(odds.low()))
        .put("high", number(odds.high()));
  }

  private static ObjectNode failure(FailureRisk failure) {
    ObjectNode node = odds(failure.probability());
    if (failure.place().isPresent()) {
      place(node, failure.place().get());
      node.put("demand", number(failure.demand()));
      node.set("limit", range(failure.limit()));
    }
    return node;
  }

  private static void place(ObjectNode node, FailurePlace place) {
    node.put("segment", place.segment());
    node.put("along", number(place.along()));
    place.fromUnion().ifPresent(from -> node.put("from_union_mm", number(1000 * from)));
    node.put("round_deg", number(Math.toDegrees(place.round())));
    node.put("side", place.side());
  }

  private static ObjectNode share(InputShare share) {
    ObjectNode node = JsonAnswer.object();
    node.put("input", share.input());
    node.put("share", number(share.share()));
    if (!share.advice().isBlank()) {
      node.put("advice", share.advice());
    }
    return node;
  }

  private static ObjectNode limit(LimitSample limit) {
    ObjectNode node = JsonAnswer.object();
    node.put("segment", limit.segment());
    node.put("along", number(limit.along()));
    node.set("crack_strain", range(limit.crack()));
    node.set("kink_strain", range(limit.kink()));
    node.put("yield_strain", number(limit.yield()));
    return node;
  }

  static ObjectNode range(Range range) {
    ObjectNode node = JsonAnswer.object();
    node.put("low", number(range.low()));
    node.put("middle", number(range.middle()));
    node.put("high", number(range.high()));
    return node;
  }
}
