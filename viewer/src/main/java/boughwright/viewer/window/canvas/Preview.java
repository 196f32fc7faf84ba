// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.TrialResult;
import java.util.Objects;
import java.util.Optional;

/**
 * A pose that is shown in place of that of the plan: while a hand moves, or of a plan that could
 * be.
 *
 * @param plan the plan as it would be
 * @param trial its trial, which holds
 * @param told what it is called; empty while a hand moves
 */
public record Preview(Plan plan, TrialResult trial, Optional<String> told) {
  public Preview {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(told, "told");
  }

  /** A pose while a hand moves. */
  public static Preview ofHand(Plan plan, TrialResult trial) {
    return new Preview(plan, trial, Optional.empty());
  }

  /** What it is, beside the other poses there are. */
  String words() {
    return told.orElse("while you pull");
  }
}
