// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.physics.wood.WoodLimits;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** The limits published for a wood, to stand beside a computed strain. */
final class Published {
  private Published() {}

  /** The limits as rows beside a strain, then where they come from. */
  static void write(TextPage page, String strainWords, double strain, Optional<Species> species) {
    TextTable table = new TextTable(1).row(strainWords, Shown.percent(strain));
    if (species.isEmpty()) {
      page.table(table);
      page.inner("No limits are known for wood of one's own.");
      return;
    }
    WoodLimits limits = WoodLimits.of(species.get());
    limits
        .crushingStrain()
        .ifPresent(at -> table.row("the inside starts to flow at", Shown.percent(at)));
    limits
        .ruptureRatio()
        .ifPresent(at -> table.row("rupture ratio (modulus of rupture / MOE)", Shown.percent(at)));
    page.table(table);
    page.inner(
        "Limits of clear green stem wood, "
            + species.get().botanicalName()
            + species.get().proxyFor().map(words -> " (" + words + ")").orElse("")
            + ": "
            + limits.source()
            + ".");
  }

  /** The limits for programs. */
  static ObjectNode json(Species species) {
    WoodLimits limits = WoodLimits.of(species);
    ObjectNode node = JsonAnswer.object();
    limits.crushingStrain().ifPresent(at -> node.put("crushing_strain", JsonAnswer.number(at)));
    limits.ruptureRatio().ifPresent(at -> node.put("rupture_ratio", JsonAnswer.number(at)));
    node.put("species", species.key());
    species.proxyFor().ifPresent(words -> node.put("proxy", words));
    node.put("source", limits.source());
    return node;
  }
}
