// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.TreeStand;

/** Targets of one tree, with arms that fit the limb. */
public final class Targets {
  /**
   * A radian counts as the length of the limb up to the place, as if all of it swung; of the lean
   * of a leader, as a quarter of it, so that the place of its tip counts for more (choices).
   */
  private static final double HEADING_ARM = 1;

  private static final double UPRIGHT_ARM = 0.25;

  private final TreeStand stand;
  private final Plan plan;

  /**
   * Targets of a tree.
   *
   * @param tree the tree as measured
   * @param plan its cuts and its planting angle count
   * @param species values for the tree's species, or what stands in for it
   */
  public Targets(Tree tree, Plan plan, Species species) {
    stand = new TreeStand(tree, plan, species, RodOptions.DEFAULT);
    this.plan = plan;
  }

  /** What the cuts leave of a segment, as a fraction of its length from its start [1]. */
  public double left(String segment) {
    return stand.cutting().left(stand.skeleton().indexOf(segment));
  }

  /** The axis runs in a direction at a place. */
  public Target heading(Spot spot, Direction3 direction) {
    return new Target.Heading(spot, direction, HEADING_ARM * length(spot));
  }

  /** A tip stands over the trunk base and points up, once the tree is at its planting angle. */
  public Target upright(Spot spot) {
    Skeleton skeleton = stand.skeleton();
    Point3 base = skeleton.start(skeleton.outward(0));
    Direction3 up =
        plan.planting()
            .map(planting -> Standing.turn(planting).inverse().turn(Direction3.UP))
            .orElse(Direction3.UP);
    return new Target.Upright(spot, base, up, UPRIGHT_ARM * length(spot));
  }

  private double length(Spot spot) {
    int i = stand.skeleton().indexOf(spot.segment());
    double own = stand.skeleton().length(i);
    return Math.max(own, new LimbPath(stand, spot).lengthTo(spot));
  }
}
