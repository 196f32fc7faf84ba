// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.Occasion;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.Verdicts;
import java.util.Optional;

/**
 * Tries plans, with their risk and verdict where that is wanted.
 *
 * @param draws how the risk is drawn; empty for none
 * @param said the day and what was said of the tree
 * @param progress told what is going on
 */
record TrialRun(Optional<Sampling.Draws> draws, OccasionOptions.Said said, Progress progress) {
  /**
   * Tries one request.
   *
   * @param name what is tried, such as "plan a"
   */
  TrialResult of(TrialRequest request, String name) {
    progress.now("Trying " + name);
    if (draws.isEmpty()) {
      return Trial.run(request);
    }
    progress.now("Drawing " + name + " " + draws.get().samples() + " times");
    RiskOptions options =
        new RiskOptions(draws.get().samples(), draws.get().seed(), progress::part);
    TrialResult result = RiskTrial.run(request, options);
    progress.now("Judging " + name);
    return Verdicts.of(request, result, occasion(request)).map(result::withVerdict).orElse(result);
  }

  private Occasion occasion(TrialRequest request) {
    return new Occasion(
        Optional.of(said.on()), said.over(request.tree().condition()), said.frost());
  }
}
