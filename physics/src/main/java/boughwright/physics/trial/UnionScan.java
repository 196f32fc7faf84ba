// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.RodSection;
import boughwright.physics.wood.WoodPrior;
import java.util.Optional;

/**
 * How near a union is to tearing: the moment that opens the crotch over the moment at which the
 * limb itself, of clear wood, would crack there, against the strength of a fork over that of its
 * limb. A crotch with bark caught in it is weak whichever way it is bent; a sound one is taken to
 * be as strong as the limb when it is closed or bent sideways, which the limb's own crack covers.
 */
final class UnionScan {
  private final TreeRods rods;
  private final Timber timber;
  private final RodPose pose;
  private final WoodState state;

  UnionScan(TreeRods rods, RodPose pose, WoodState state) {
    this.rods = rods;
    timber = rods.timber();
    this.pose = pose;
    this.state = state;
  }

  /** The union a span starts with, if it does and is strained in a way that counts. */
  Optional<Nearest> of(int span) {
    TreeRods.Run run = rods.run(span);
    int i = run.piece().segment();
    Skeleton skeleton = state.skeleton();
    int parent = skeleton.parent(i);
    boolean starts = Math.abs(run.piece().from() - timber.bendsFrom(i)) < 1e-9;
    if (!starts || parent == Skeleton.NONE || skeleton.joint(i) != Joint.UNION) {
      return Optional.empty();
    }
    double s = run.toSpan(run.piece().from());
    RodSection section = pose.section(span, s);
    Vector3 stretched = run.frame().turn(PoseReader.stretched(section));
    double bend = stretched.norm();
    Vector3 crotch = crotchSide(skeleton, parent, i);
    if (bend == 0 || crotch.norm() == 0) {
      return Optional.empty();
    }
    boolean included = state.features(i).includedBark();
    double opening = stretched.dot(crotch) / (bend * crotch.norm());
    double part = included ? Math.max(Math.abs(opening), opening) : opening;
    double radius = timber.woodRadius(i, run.piece().from());
    double own =
        WoodState.momentAtTension(timber.wood(i), radius, state.prior().crackStrain(2 * radius));
    double demand = part * section.bendingMoment() / own;
    double strength =
        opening < 0
            ? WoodPrior.CLOSED_INCLUDED_UNION
            : WoodPrior.union(included) * thick(i, parent);
    return demand > 0
        ? Optional.of(Nearest.of(demand, strength, span, s, crotch))
        : Optional.empty();
  }

  /** From the limb's axis toward the acute side of the crotch, at rest. */
  static Vector3 crotchSide(Skeleton skeleton, int parent, int i) {
    Vector3 limb = skeleton.direction(i).vector();
    Vector3 stem = skeleton.direction(parent).vector();
    Vector3 acute = stem.dot(limb) < 0 ? stem.times(-1) : stem;
    return acute.minus(limb.times(acute.dot(limb)));
  }

  private double thick(int i, int parent) {
    double ratio =
        timber.barkRadius(i, timber.bendsFrom(i))
            / timber.barkRadius(
                parent, state.skeleton().segment(i).along() * state.skeleton().length(parent));
    return WoodPrior.unionOfThickness(ratio);
  }
}
