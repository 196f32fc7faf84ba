// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Optional;

/**
 * A tree as its plan cuts and plants it, worked out once for many pictures: immutable.
 *
 * @see LiveScene
 */
public final class LiveTree {
  final Skeleton skeleton;
  final List<Limb> limbs;
  final Cutting kept;
  private final List<Spot> cuts;
  private final Optional<Planting> planting;
  private final Stand stand;
  private final Pose measured;
  private final Capsules wood;
  private Leafage leafage;

  /**
   * Works it out.
   *
   * @param plan its cuts and planting angle; without one the tree stands as measured
   */
  public LiveTree(Tree tree, Optional<Plan> plan) {
    skeleton = new Skeleton(tree);
    limbs = Limb.of(skeleton);
    cuts = plan.map(Plan::cuts).orElse(List.of());
    kept = new Cutting(skeleton, cuts);
    planting = plan.flatMap(Plan::planting);
    stand = Stand.of(planting, skeleton.start(skeleton.outward(0)));
    measured = Pose.measured(skeleton, limbs, stand);
    wood = Capsules.of(this, measured);
  }

  /** Whether this is what another tree and plan would give. */
  public boolean fits(Tree tree, Optional<Plan> plan) {
    return skeleton.tree().equals(tree)
        && cuts.equals(plan.map(Plan::cuts).orElse(List.of()))
        && planting.equals(plan.flatMap(Plan::planting));
  }

  public Skeleton skeleton() {
    return skeleton;
  }

  public Cutting kept() {
    return kept;
  }

  /** How the measured tree is turned to stand as planted. */
  public Stand stand() {
    return stand;
  }

  /** The middle of the root base [m, scene frame]. */
  public Point3 base() {
    return stand.place(skeleton.start(skeleton.outward(0)));
  }

  public Pose measured() {
    return measured;
  }

  /**
   * The pose of a trial on this tree.
   *
   * @throws IllegalArgumentException if it does not hold, so that there is none
   */
  public Pose bent(TrialResult trial) {
    if (!trial.outcome().holds()) {
      throw new IllegalArgumentException("a trial that does not hold has no pose");
    }
    return Pose.bent(skeleton, limbs, stand, trial);
  }

  /** A pose part of the way from one to another: 0 is the one, 1 the other. */
  public static Pose between(Pose one, Pose other, double part) {
    return part <= 0 ? one : part >= 1 ? other : one.between(other, part);
  }

  /**
   * The outlines of the limbs a trial bends, where they lie elsewhere than measured and than in the
   * pose that is shown; from where they leave that.
   */
  public List<StagesView.Outline> outlines(TrialResult trial, Pose shown) {
    LimbSkins skins = new LimbSkins(skeleton, limbs, kept);
    return skins.outlines(skins.bent(trial), bent(trial), measured, shown);
  }

  /** What it wears in leaf; worked out when it is first in leaf. */
  synchronized Leafage leafage() {
    if (leafage == null) {
      leafage = new Leafage(kept, stand);
    }
    return leafage;
  }

  /** What can be struck by a line of sight in a pose. */
  public Capsules capsules(Pose pose) {
    return pose == measured ? wood : Capsules.of(this, pose);
  }
}
