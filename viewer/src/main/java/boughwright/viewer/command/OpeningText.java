// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.VerdictWords;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The first lines of an answer: the verdict, or why there is none. */
final class OpeningText {
  private OpeningText() {}

  /**
   * Writes one line for each plan; a line that holds for several is written once.
   *
   * @param response how the wood answers ({@link ResponseWord})
   * @param species the wood the numbers come from
   */
  static void write(
      TextPage page, List<TrialResult> trials, String response, Optional<Species> species) {
    Set<String> lines = new LinkedHashSet<>();
    for (TrialResult trial : trials) {
      String plan = trials.size() > 1 ? "Plan " + trial.plan() + ": " : "";
      if (trial.verdict().isPresent()) {
        lines.add(plan + VerdictText.line(trial.verdict().get(), species));
      } else if (!trial.outcome().holds()) {
        lines.add(plan + VerdictWords.NO_POSE);
      } else {
        lines.add(response.equals(ResponseWord.ELASTIC) ? TrialText.ELASTIC : TrialText.NO_RISK);
      }
    }
    lines.forEach(page::words);
  }
}
