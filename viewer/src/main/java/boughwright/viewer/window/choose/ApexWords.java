// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.VisibleText;
import boughwright.physics.apex.ApexOption;
import boughwright.physics.apex.ApexSearch;
import boughwright.physics.apex.Apexes;
import boughwright.physics.apex.Chop;
import boughwright.physics.apex.TipStand;
import boughwright.physics.trial.Odds;
import boughwright.viewer.scene.NoBendWords;
import boughwright.viewer.scene.Wording;
import boughwright.viewer.scene.YearsWords;
import boughwright.viewer.window.work.Workspace;
import java.util.Locale;

/** What could become the top, in words. */
final class ApexWords {
  private final Workspace workspace;

  ApexWords(Workspace workspace) {
    this.workspace = workspace;
  }

  private String length(double metres) {
    return workspace.units().inWords(Wording.millimetres(metres));
  }

  String opening(Apexes apexes) {
    if (apexes.options().isEmpty()) {
      return "No shoot of this tree is long and thick enough to become its top"
          + (apexes.chop().isPresent() ? "; a new leader would have to be grown." : ".");
    }
    ApexOption first = apexes.options().get(0);
    String left =
        switch (apexes.leftOut()) {
          case 0 -> "";
          case 1 -> " One thinner one was left out.";
          default -> " " + apexes.leftOut() + " thinner ones were left out.";
        };
    return switch (first.state()) {
      case STANDS, REACHES -> "The best comes first." + left;
      case NEARER ->
          "None comes over the root base within the risk allowed; the nearest is first." + left;
      case CANNOT -> "None can be brought nearer to the root base." + left;
    };
  }

  /** Where a leader comes, what that takes, and what it leaves. */
  String option(ApexOption option) {
    StringBuilder words = new StringBuilder(state(option));
    option
        .bent()
        .ifPresent(
            bent ->
                words
                    .append(" Pull ")
                    .append(workspace.units().force(bent.pull()))
                    .append(bent.breaking() > 0 ? "; breaking: " + Odds.words(bent.breaking()) : "")
                    .append('.'));
    option
        .noBend()
        .ifPresent(
            why ->
                words
                    .append(" No bend helps: ")
                    .append(workspace.units().inWords(NoBendWords.of(why)))
                    .append('.'));
    option
        .leader()
        .takeover()
        .ifPresent(
            step ->
                words.append(
                    String.format(
                        Locale.ROOT,
                        " It is %.2f as thick as the wood it takes over from; %s until that is %.1f"
                            + " (believable: common practice, no source).",
                        step.ratio(),
                        YearsWords.of(option.thickening()),
                        ApexSearch.BELIEVABLE)));
    option
        .widest()
        .ifPresent(
            wound ->
                words
                    .append(" The widest cut, ")
                    .append(length(wound.width()))
                    .append(", ")
                    .append(YearsWords.closes(wound))
                    .append('.'));
    return words.toString();
  }

  private String state(ApexOption option) {
    String there = stand(option.then());
    return switch (option.state()) {
      case STANDS -> "It stands over the root base as it is, " + there + ".";
      case REACHES -> "It can be bent over the root base: " + there + ".";
      case NEARER -> "It comes nearer: " + there + ".";
      case CANNOT -> "It stays where it is: " + there + ".";
    };
  }

  private String stand(TipStand stand) {
    return "the tip "
        + length(stand.beside())
        + " beside it, leaning "
        + Math.round(Math.toDegrees(stand.lean()))
        + "°, "
        + length(stand.height())
        + " high";
  }

  String chop(Chop chop, boolean best) {
    Spot at = chop.at();
    return "Chop "
        + VisibleText.of(at.segment())
        + String.format(Locale.ROOT, ", %.0f %% along, where it is ", 100 * at.along())
        + length(chop.caliper())
        + " thick. The wound "
        + YearsWords.closes(chop.wound())
        + "; the new leader is thick enough "
        + YearsWords.when(chop.thickening())
        + " and "
        + length(chop.height())
        + " high "
        + YearsWords.when(chop.growing())
        + ". No bud is promised there. A third of the final height, and that six base calipers:"
        + " common practice, no source."
        + (best ? " No leader is better in all respects." : "");
  }
}
