// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.physics.wood.BranchStiffness;
import boughwright.physics.wood.Doubt;
import boughwright.physics.wood.WoodPrior;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a trial takes for live branch wood of a species before anything is measured on a tree. */
final class LivingWood {
  /** Diameters under bark a person can hold the branch against [m]. */
  private static final double[] DIAMETERS = {0.005, 0.01, 0.02, 0.04};

  /** Nine values in ten of a normal distribution lie within this many standard deviations. */
  private static final double NINE_IN_TEN = 1.645;

  private LivingWood() {}

  static void write(TextPage page, Species species) {
    WoodPrior prior = WoodPrior.of(species);
    page.heading("Taken for live branch wood under bark, before a pull test (nine in ten lie in)");
    double moe = species.trueMoe() * BranchStiffness.BRANCH_FACTOR;
    Doubt stiffness = prior.moe();
    TextTable table =
        new TextTable(1)
            .row(
                "modulus of elasticity",
                Shown.gigapascals(moe),
                "("
                    + Shown.fixed(low(moe, stiffness) / 1e9, 2)
                    + " to "
                    + Shown.gigapascals(high(moe, stiffness))
                    + ")");
    double yield = prior.yieldStrain();
    table.row("the inside starts to flow", Shown.percent(yield), range(yield, prior.yield()));
    double kink = yield * prior.kinkOverYield();
    table.row(
        "the inside wrinkles and kinks",
        Shown.percent(kink),
        range(kink, prior.kink().with(prior.yield())));
    for (double diameter : DIAMETERS) {
      double crack = prior.crackStrain(diameter);
      table.row(
          "the outside cracks, at " + Shown.fixed(1000 * diameter, 0) + " mm thick",
          Shown.percent(crack),
          range(crack, prior.crack()));
    }
    page.table(table);
    page.words(
        "The modulus is the one of clear wood times "
            + BranchStiffness.BRANCH_FACTOR
            + ": "
            + BranchStiffness.BRANCH_FACTOR_SOURCE
            + ". Strains are those of the outermost fibre; how they were chosen, with the published"
            + " figures beside them, is in docs/theory/risk.md.");
  }

  static ObjectNode json(Species species) {
    WoodPrior prior = WoodPrior.of(species);
    ObjectNode node = JsonAnswer.object();
    node.put("branch_factor", BranchStiffness.BRANCH_FACTOR);
    node.put("branch_factor_source", BranchStiffness.BRANCH_FACTOR_SOURCE);
    double moe = species.trueMoe() * BranchStiffness.BRANCH_FACTOR / 1e9;
    node.set("moe_GPa", json(moe, prior.moe()));
    node.set("yield_strain", json(prior.yieldStrain(), prior.yield()));
    node.set(
        "kink_strain",
        json(prior.yieldStrain() * prior.kinkOverYield(), prior.kink().with(prior.yield())));
    ArrayNode cracks = node.putArray("crack_strain");
    for (double diameter : DIAMETERS) {
      ObjectNode one = json(prior.crackStrain(diameter), prior.crack());
      cracks.add(one.put("diameter_mm", JsonAnswer.number(1000 * diameter)));
    }
    return node;
  }

  private static ObjectNode json(double median, Doubt doubt) {
    return JsonAnswer.object()
        .put("median", JsonAnswer.number(median))
        .put("low", JsonAnswer.number(low(median, doubt)))
        .put("high", JsonAnswer.number(high(median, doubt)));
  }

  private static String range(double median, Doubt doubt) {
    return "("
        + Shown.fixed(100 * low(median, doubt), 2)
        + " to "
        + Shown.percent(high(median, doubt))
        + ")";
  }

  private static double low(double median, Doubt doubt) {
    return median * Math.exp(-NINE_IN_TEN * doubt.total());
  }

  private static double high(double median, Doubt doubt) {
    return median * Math.exp(NINE_IN_TEN * doubt.total());
  }
}
