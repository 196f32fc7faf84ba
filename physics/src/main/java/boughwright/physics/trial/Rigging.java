// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
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
 * A tree as rods with all that acts on it, before it is solved.
 *
 * @param rods the tree as rods
 * @param loads the proposals' loads
 * @param settled what the measured shape is at rest under
 * @param weights weight of the wood that is left, where it counts
 */
record Rigging(TreeRods rods, PlanLoads loads, RodLoads settled, List<SpanWeight> weights) {
  static Rigging of(Plan plan, TreeRods rods, List<Proposal> proposals) {
    Vector3 gravity = Standing.gravity(plan);
    PlanLoads loads = new PlanLoads(rods, proposals, gravity);
    if (!plan.selfWeight()) {
      return new Rigging(rods, loads, RodLoads.NONE, List.of());
    }
    OwnWeight own = new OwnWeight(rods);
    RodLoads settled = own.measured(new Vector3(0, 0, -Standing.GRAVITY));
    TreeRods wound = rods.isCoiled() ? wound(rods, settled) : rods;
    return new Rigging(wound, loads, settled, own.left(gravity));
  }

  /** Coils are wound on the tree as it hangs, and have no part in carrying its weight. */
  private static TreeRods wound(TreeRods rods, RodLoads settled) {
    RodModel bare = new RodModel(rods.base(), Rotation.NONE, rods.thinned(0).spans(), settled);
    RodSolution hangs = RodSolver.solve(bare, settled, RodOptions.DEFAULT);
    return hangs.status().holds() ? rods.woundIn(hangs.pose()) : rods;
  }

  /** The rods as a model, or others of the same tree that remember. */
  RodModel model(TreeRods of) {
    return new RodModel(of.base(), Rotation.NONE, of.spans(), settled);
  }

  /** A part of the plan's loads; the whole weight of the wood. */
  RodLoads part(HeldTree.Grip grip) {
    return loads.with(weights, grip);
  }

  /** Everything taken off; the whole weight of the wood. */
  RodLoads loose() {
    return loads.loose(weights);
  }
}
