// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.modeller.species.Species;
import boughwright.physics.wood.WoodSpread;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Woods of the table, for programs. */
final class SpeciesJson {
  private SpeciesJson() {}

  static String of(List<Species> woods) {
    ObjectNode answer = JsonAnswer.object();
    answer.set("species", JsonAnswer.list(woods, SpeciesJson::one));
    answer.set("coefficients_of_variation", spread(WoodSpread.CLEAR_WOOD));
    return JsonAnswer.text(answer);
  }

  private static ObjectNode spread(WoodSpread spread) {
    return JsonAnswer.object()
        .put("moe", number(spread.moe()))
        .put("mor", number(spread.mor()))
        .put("crushing", number(spread.crushing()))
        .put("shear", number(spread.shear()))
        .put("source", spread.source());
  }

  private static ObjectNode one(Species wood) {
    ObjectNode node = JsonAnswer.object();
    node.put("key", wood.key());
    node.put("botanical_name", wood.botanicalName());
    node.set("common_names", JsonAnswer.words(wood.commonNames()));
    node.put("moe_GPa", number(wood.moe() / 1e9));
    node.put("true_moe_GPa", number(wood.trueMoe() / 1e9));
    wood.mor().ifPresent(value -> node.put("mor_MPa", number(value / 1e6)));
    wood.crushing().ifPresent(value -> node.put("crushing_MPa", number(value / 1e6)));
    wood.shear().ifPresent(value -> node.put("shear_MPa", number(value / 1e6)));
    wood.tensionPerp().ifPresent(value -> node.put("tension_perp_MPa", number(value / 1e6)));
    wood.compressionPerp()
        .ifPresent(value -> node.put("compression_perp_MPa", number(value / 1e6)));
    wood.workToMaxLoad()
        .ifPresent(value -> node.put("work_to_max_load_kJ_m3", number(value / 1e3)));
    wood.density().ifPresent(value -> node.put("density_kg_m3", number(value)));
    wood.proxyFor().ifPresent(words -> node.put("proxy", words));
    node.put("source", wood.source());
    node.put("checked", wood.checked());
    node.set("limits", Published.json(wood));
    SpeciesScatter scatter = SpeciesScatter.of(wood);
    node.set("coefficients_of_variation", spread(scatter.shown()).put("whose", scatter.whose()));
    node.set("missing", JsonAnswer.words(MissingFigures.of(wood)));
    node.set("live_branch_wood", LivingWood.json(wood));
    return node;
  }
}
