// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.modeller.units.ForceUnit;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.PlainBranch;
import boughwright.physics.trial.TipPull;
import java.util.List;
import java.util.Optional;

/** The answer for one plain branch, for a person. */
final class BranchText {
  /** Nearer than this is shown as no distance [m]. */
  private static final double NOTHING = 5e-5;

  private BranchText() {}

  static String of(TipPull pull, Species species) {
    TextPage page = new TextPage();
    page.words(TrialText.ELASTIC);
    page.title(about(pull.branch(), species));
    if (!pull.trial().outcome().holds()) {
      TrialText.noPose(page, pull.trial().outcome());
      return page.toString();
    }
    page.heading("To bring the tip " + Shown.millimetres(pull.tipDown()) + " down");
    page.table(
        new TextTable(1)
            .row("pull at the tip, straight down", Shown.newtons(pull.force()))
            .row("  the weight of", Shown.kilograms(mass(pull)))
            .row("the tip also comes in by", Shown.millimetres(pull.tipIn())));
    page.inner(
        "The pull keeps its direction all the way, like a hung weight: square to the branch at"
            + " rest, not to the bent branch.");
    Peak peak = pull.trial().peak().orElseThrow();
    page.heading("Bent hardest");
    double from = peak.along() * pull.branch().length();
    page.inner(
        (from < NOTHING ? "Where it is held" : Shown.millimetres(from) + " from where it is held")
            + ", stretched on top, bending moment "
            + Shown.newtonMetres(peak.moment())
            + ".");
    Published.write(page, "bending strain there", peak.bendingStrain(), Optional.of(species));
    TrialText.errors(page, pull.trial());
    TrialText.basis(page, List.of(pull.trial()));
    TrialText.cautions(page);
    return page.toString();
  }

  private static double mass(TipPull pull) {
    return ForceUnit.KILOGRAM_FORCE.fromNewtons(pull.force());
  }

  private static String about(PlainBranch branch, Species species) {
    return "Branch of "
        + species.botanicalName()
        + ", "
        + Shown.plain(1000 * branch.length())
        + " mm long, calipers "
        + Shown.plain(1000 * branch.caliperStart())
        + " and "
        + Shown.plain(1000 * branch.caliperEnd())
        + " mm, bark "
        + Shown.plain(1000 * branch.bark())
        + " mm";
  }
}
