// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.modeller.units.ForceUnit;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.PlainBranch;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TipPull;
import boughwright.viewer.scene.FailureWords;
import boughwright.viewer.scene.RangeWords;
import java.util.List;
import java.util.Optional;

/** The answer for one plain branch, for a person. */
final class BranchText {
  /** Nearer than this is shown as no distance [m]. */
  private static final double NOTHING = 5e-5;

  private BranchText() {}

  static String of(BranchAnswer answer) {
    TipPull pull = answer.pull();
    TextPage page = new TextPage();
    OpeningText.write(
        page,
        List.of(answer.held().orElse(pull.trial())),
        ResponseWord.FIBRE,
        Optional.of(answer.species()));
    page.title(about(pull.branch(), answer.species()));
    if (!pull.trial().outcome().holds()) {
      TrialText.noPose(page, pull.trial().outcome());
      return page.toString();
    }
    answer.verdict().ifPresent(verdict -> VerdictText.brief(page, verdict));
    force(page, answer);
    WarmthText.write(page, answer.celsius());
    answer.risk().ifPresent(risk -> odds(page, risk));
    strain(page, answer);
    answer.wire().ifPresent(choice -> CoilText.choices(page, List.of(choice)));
    TrialText.errors(page, pull.trial());
    TrialText.warnings(page, List.of(pull.trial()));
    TrialText.basis(page, List.of(pull.trial()));
    TrialText.cautions(page);
    return page.toString();
  }

  private static void force(TextPage page, BranchAnswer answer) {
    TipPull pull = answer.pull();
    page.heading("To bring the tip " + Shown.millimetres(pull.tipDown()) + " down");
    answer.force().ifPresent(range -> page.inner("Pull " + RangeWords.newtons(range) + "."));
    page.table(
        new TextTable(1)
            .row("best guess, pull at the tip, straight down", Shown.newtons(pull.force()))
            .row("  the weight of", Shown.kilograms(mass(pull)))
            .row("the tip also comes in by", Shown.millimetres(pull.tipIn())));
    page.inner(
        "The pull keeps its direction all the way, like a hung weight: square to the branch at"
            + " rest, not to the bent branch.");
  }

  private static void odds(TextPage page, Risk risk) {
    page.heading("What can go wrong, with the tip held there");
    TextTable table = new TextTable(2);
    risk.failures()
        .forEach(
            failure ->
                table.row(FailureWords.what(failure.mode()), Odds.words(failure.probability())));
    page.table(table);
    ShareText.write(page, risk);
  }

  private static void strain(TextPage page, BranchAnswer answer) {
    TipPull pull = answer.pull();
    Peak peak = pull.trial().peak().orElseThrow();
    page.heading("Bent hardest");
    double from = peak.along() * pull.branch().length();
    page.inner(
        (from < NOTHING ? "Where it is held" : Shown.millimetres(from) + " from where it is held")
            + ", stretched on top, bending moment "
            + Shown.newtonMetres(peak.moment())
            + ".");
    if (answer.risk().isEmpty()) {
      Published.write(
          page, "bending strain there", peak.bendingStrain(), Optional.of(answer.species()));
      return;
    }
    PeakText.strains(page, peak);
    YieldText.write(page, peak, answer.risk().get());
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
