// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.plan.Proposal;
import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.TrialRequest;

/**
 * What was bent by hand and let go, so that a coil holds it, with or without lines.
 *
 * @param proposal the same as a proposal
 * @param trial what was tried
 * @param forced the pose at the end of the pull by hand
 * @param held the pose it comes to rest in
 * @param missing what is missing to the target at rest [m]
 * @param miss how much that is [m]
 */
record Held(
    Proposal proposal,
    TrialRequest trial,
    HeldTree forced,
    HeldTree held,
    double[] missing,
    double miss) {

  /**
   * What is tried.
   *
   * @param proposal lines, coil and hand as a proposal
   * @param trial with what is kept
   */
  record Asked(Proposal proposal, TrialRequest trial) {}
}
