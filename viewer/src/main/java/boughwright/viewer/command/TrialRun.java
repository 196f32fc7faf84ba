// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.Optional;

/**
 * Tries plans, with their risk and verdict where that is wanted.
 *
 * @param draws how the risk is drawn; empty for none
 * @param said the day and what was said of the tree
 * @param progress told what is going on
 */
record TrialRun(Optional<Sampling.Draws> draws, OccasionOptions.Said said, Progress progress) {
  TrialResult of(TrialRequest request) {
    progress.now("Trying plan " + request.plan().id());
    return Trial.run(request);
  }
}
