// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.physics.trial.AidEffect;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What aids do and cost, for programs: newtons, millimetres, degrees, parts of one. */
final class AidJson {
  private AidJson() {}

  static ArrayNode of(List<AidEffect> effects) {
    return JsonAnswer.list(effects, AidJson::effect);
  }

  private static ObjectNode effect(AidEffect effect) {
    ObjectNode node = JsonAnswer.object();
    node.put("aid", effect.aid());
    node.put("on", effect.on());
    effect.without().ifPresent(figures -> node.set("without", figures(figures)));
    effect.with().ifPresent(figures -> node.set("with", figures(figures)));
    if (!effect.cuts().isEmpty()) {
      node.set("cuts", JsonAnswer.list(effect.cuts(), AidJson::cut));
    }
    node.set("does", JsonAnswer.words(effect.says()));
    node.put("price", effect.price());
    return node;
  }

  private static ObjectNode figures(AidEffect.Figures figures) {
    ObjectNode node = JsonAnswer.object();
    node.put("pull_N", number(figures.pull()));
    node.put("moved_mm", number(1000 * figures.moved()));
    node.put("tension_strain", number(figures.tensionStrain()));
    if (figures.crack().isPresent()) {
      node.put("of_crack_limit", number(figures.crack().getAsDouble()));
    }
    if (figures.split().isPresent()) {
      node.put("of_split_limit", number(figures.split().getAsDouble()));
    }
    return node;
  }

  private static ObjectNode cut(AidEffect.Cut cut) {
    ObjectNode node = JsonAnswer.object();
    node.put("along", number(cut.along()));
    node.put("closed_deg", number(Math.toDegrees(cut.closed())));
    node.put("shut_at_deg", number(Math.toDegrees(cut.full())));
    node.put("shut", cut.isShut());
    return node;
  }
}
