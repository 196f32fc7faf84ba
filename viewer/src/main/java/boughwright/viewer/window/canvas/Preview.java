// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.TrialResult;
import java.util.Objects;

/**
 * A pose that is shown while a hand moves, in place of that of the plan.
 *
 * @param plan the plan as it would be
 * @param trial its trial, which holds
 */
public record Preview(Plan plan, TrialResult trial) {
  public Preview {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(trial, "trial");
  }
}
