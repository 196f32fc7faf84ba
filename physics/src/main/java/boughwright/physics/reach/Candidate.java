// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.physics.trial.RiskGuess;
import java.util.List;

/**
 * Lines that are a choice.
 *
 * @param tried what they bring
 * @param risk what that risks
 * @param pull the hardest pull of a line [N]
 * @param nearest how near they could bring the target whatever the risk [m]
 */
record Candidate(Tried tried, RiskGuess risk, double pull, double nearest) {
  /** Whether the lines are eased because of the risk. */
  boolean isEased() {
    return nearest < tried.miss();
  }

  double miss() {
    return tried.miss();
  }

  List<Tie> ties() {
    return tried.ties();
  }

  int lines() {
    return tried.ties().size();
  }
}
