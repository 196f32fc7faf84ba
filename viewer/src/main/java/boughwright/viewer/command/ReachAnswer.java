// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Plan;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.Reached;
import boughwright.physics.reach.Target;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Optional;

/**
 * What a search for lines gave.
 *
 * @param file the tree
 * @param target what was wanted
 * @param mostRisk the risk allowed [1]
 * @param reached what was found
 * @param drawn the choices with their risk drawn, in the same order
 * @param kept what was done with one of them
 */
record ReachAnswer(
    TreeFile file, Target target, double mostRisk, Reached reached, List<Drawn> drawn, Kept kept) {
  ReachAnswer {
    drawn = List.copyOf(drawn);
  }

  /**
   * A choice and its trial.
   *
   * @param choice the choice
   * @param trial its trial, with risk and verdict where they were asked for
   */
  record Drawn(Choice choice, TrialResult trial) {}

  /**
   * What was done with a choice.
   *
   * @param choice its number, counted from 1
   * @param picture the picture that was written
   * @param plan the plan it was written into
   */
  record Kept(int choice, Optional<String> picture, Optional<Plan> plan) {}
}
