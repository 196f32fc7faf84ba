// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Standing;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.RodModel;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import boughwright.physics.rod.SpanWeight;
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
    TreeRods rods = new TreeRods(new Timber(cutting, wood), plan.clamp());
    Vector3 gravity = Standing.gravity(plan);
    PlanLoads loads = new PlanLoads(rods, proposals, gravity);
    RodLoads settled = RodLoads.NONE;
    List<SpanWeight> weights = List.of();
    if (plan.selfWeight()) {
      OwnWeight own = new OwnWeight(rods);
      settled = own.measured(new Vector3(0, 0, -Standing.GRAVITY));
      weights = own.left(gravity);
    }
    RodModel model = new RodModel(rods.base(), Rotation.NONE, rods.spans(), settled);
    return new Attempt(rods, loads, RodSolver.solve(model, loads.with(weights), options));
  }

  boolean holds() {
    return solution.status().holds();
  }
}
