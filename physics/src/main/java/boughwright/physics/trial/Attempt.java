// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import java.util.List;

/**
 * One solution of a plan under some wood.
 *
 * @param rods the tree as rods
 * @param loads what was put on it
 * @param solution what the rods do
 */
record Attempt(TreeRods rods, PlanLoads loads, RodSolution solution) {
  /**
   * Solves a plan.
   *
   * @param plan the plan
   * @param cutting what its cuts leave of the tree
   * @param proposals what to try
   * @param wood what is taken for true of the wood
   * @param options how to solve
   */
  static Attempt of(
      Plan plan, Cutting cutting, List<Proposal> proposals, TrialWood wood, RodOptions options) {
    Windings windings = Windings.of(cutting.skeleton(), proposals);
    Timber timber = new Timber(cutting, wood, AidWork.of(cutting.skeleton(), proposals));
    TreeRods rods = new TreeRods(timber, plan.clamp(), windings);
    return of(plan, rods, proposals, options);
  }

  /** Solves a plan on rods that were made before. */
  static Attempt of(Plan plan, TreeRods rods, List<Proposal> proposals, RodOptions options) {
    Rigging rigging = Rigging.of(plan, rods, proposals);
    RodSolution solution =
        RodSolver.solve(rigging.model(rigging.rods()), rigging.part(HeldTree.Grip.ALL), options);
    return new Attempt(rigging.rods(), rigging.loads(), solution);
  }

  boolean holds() {
    return solution.status().holds();
  }
}
