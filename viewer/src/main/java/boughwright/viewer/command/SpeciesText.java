// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.MoeBasis;
import boughwright.modeller.species.Species;
import boughwright.physics.wood.WoodLimits;
import boughwright.physics.wood.WoodSpread;
import java.util.List;
import java.util.OptionalDouble;

/** Woods of the table, for a person. */
final class SpeciesText {
  private SpeciesText() {}

  static String list(List<Species> all) {
    TextPage page = new TextPage();
    page.words("Green clear stem wood, as published. A star marks a wood another stands in for.");
    page.blank();
    TextTable table = new TextTable(1).row("key", "MOE", "rupture", "crushing", "density");
    for (Species species : all) {
      table.row(
          species.key() + (species.isProxy() ? " *" : ""),
          Shown.gigapascals(species.moe()),
          stress(species.mor()),
          stress(species.crushing()),
          density(species.density()));
    }
    page.table(table);
    page.heading(
        "MOE: modulus of elasticity; rupture: modulus of rupture; crushing: strength along the"
            + " grain; density: dry mass over green volume.");
    page.words("For names, sources and stand-ins: java -jar boughwright.jar species KEY");
    return page.toString();
  }

  static String one(Species species) {
    TextPage page = new TextPage();
    page.words(species.botanicalName() + " (" + species.key() + ")");
    if (!species.commonNames().isEmpty()) {
      page.words("Also called " + String.join(", ", species.commonNames()) + ".");
    }
    species.proxyFor().ifPresent(words -> page.words("No values of its own: " + words + "."));
    page.heading("Green clear stem wood");
    page.table(published(species));
    page.words("Source: " + species.source() + " (" + species.checked() + ").");
    page.words(MissingFigures.words(species));
    page.blank();
    spread(page, species);
    LivingWood.write(page, species);
    return page.toString();
  }

  private static TextTable published(Species species) {
    TextTable table = new TextTable(1);
    table.row("modulus of elasticity (MOE), as published", Shown.gigapascals(species.moe()));
    if (species.moeBasis() == MoeBasis.CENTRE_LOADED_14) {
      table.row(
          "  without the shear in that test, 10 % more", Shown.gigapascals(species.trueMoe()));
    }
    row(table, "modulus of rupture (MOR)", species.mor());
    row(table, "crushing strength along the grain", species.crushing());
    row(table, "shear strength along the grain", species.shear());
    row(table, "tension strength across the grain", species.tensionPerp());
    row(table, "compression across the grain, where it yields", species.compressionPerp());
    species
        .workToMaxLoad()
        .ifPresent(v -> table.row("work to the greatest load", Shown.fixed(v / 1e3, 0) + " kJ/m3"));
    species
        .density()
        .ifPresent(v -> table.row("density, dry over green", density(species.density())));
    WoodLimits limits = WoodLimits.of(species);
    limits
        .crushingStrain()
        .ifPresent(v -> table.row("crushing strain (crushing strength / MOE)", Shown.percent(v)));
    limits.ruptureRatio().ifPresent(v -> table.row("rupture ratio (MOR / MOE)", Shown.percent(v)));
    return table;
  }

  private static void row(TextTable table, String words, OptionalDouble strength) {
    strength.ifPresent(value -> table.row(words, Shown.megapascals(value)));
  }

  private static void spread(TextPage page, Species species) {
    SpeciesScatter scatter = SpeciesScatter.of(species);
    WoodSpread spread = scatter.shown();
    page.words(
        "Spread between pieces of clear wood (coefficient of variation), "
            + scatter.whose()
            + ": MOE "
            + share(spread.moe())
            + ", MOR "
            + share(spread.mor())
            + ", crushing "
            + share(spread.crushing())
            + ", shear "
            + share(spread.shear())
            + "; "
            + spread.source()
            + ".");
  }

  private static String share(double fraction) {
    return Shown.fixed(100 * fraction, 0) + " %";
  }

  private static String stress(OptionalDouble value) {
    return value.isPresent() ? Shown.megapascals(value.getAsDouble()) : "-";
  }

  private static String density(OptionalDouble value) {
    return value.isPresent() ? Shown.fixed(value.getAsDouble(), 0) + " kg/m3" : "-";
  }
}
