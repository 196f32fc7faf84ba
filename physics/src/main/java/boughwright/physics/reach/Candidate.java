// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.physics.trial.RiskGuess;
import java.util.List;
import java.util.Optional;

/**
 * Lines, a coil, or both that are a choice.
 *
 * @param tried what they bring; with a coil the miss is that at rest, the pose that of the bend
 * @param risk what that risks
 * @param pull the hardest pull of a line or a hand [N]
 * @param nearest how near they could bring the target whatever the risk [m]
 * @param winding the coil that holds, if any
 */
record Candidate(
    Tried tried, RiskGuess risk, double pull, double nearest, Optional<Winding> winding) {
  /** Lines alone. */
  Candidate(Tried tried, RiskGuess risk, double pull, double nearest) {
    this(tried, risk, pull, nearest, Optional.empty());
  }

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

  /** Lines; a coil counts as one. */
  int lines() {
    return tried.ties().size() + (winding.isPresent() ? 1 : 0);
  }
}
