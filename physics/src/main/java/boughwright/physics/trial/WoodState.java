// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.wood.DiscBending;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodPrior;

/** What does not change from draw to draw of one tree: how it grew and what was ticked. */
final class WoodState {
  /** A branch thicker than this part of its stem counts as a knot in it [1] (assumption). */
  private static final double THICK_BRANCH = 1.0 / 3;

  private final Skeleton skeleton;
  private final Limbs limbs;
  private final WoodPrior prior;
  private final RestCurvature rest;
  private final double[] weakening;

  WoodState(Skeleton skeleton, Limbs limbs, WoodPrior prior) {
    this.skeleton = skeleton;
    this.limbs = limbs;
    this.prior = prior;
    rest = new RestCurvature(skeleton);
    weakening = new double[skeleton.size()];
    for (int i = 0; i < skeleton.size(); i++) {
      weakening[i] = WoodPrior.weakening(features(i), carriesThickBranch(i));
    }
  }

  /** True if a branch starts on a segment that is thick enough to count as a knot in it. */
  boolean carriesThickBranch(int i) {
    return skeleton.children(i).stream()
        .filter(child -> skeleton.joint(child) == Joint.UNION)
        .map(skeleton::segment)
        .anyMatch(
            child -> child.caliperStart() > THICK_BRANCH * skeleton.caliper(i, child.along()));
  }

  Skeleton skeleton() {
    return skeleton;
  }

  Limbs limbs() {
    return limbs;
  }

  WoodPrior prior() {
    return prior;
  }

  RestCurvature rest() {
    return rest;
  }

  Features features(int i) {
    return skeleton.segment(i).features();
  }

  /** What knots and grain leave of the strength of a segment [1]. */
  double weakening(int i) {
    return weakening[i];
  }

  /**
   * Median tension strain at which a segment cracks [1]. Knots and grain take a part of the
   * strength, that is of the moment; of the strain they take more, since the inside flows.
   *
   * @param wood what is taken for its wood
   * @param radius radius of the wood [m]
   */
  double crackStrain(int i, SegmentWood wood, double radius) {
    double clear = prior.crackStrain(2 * radius);
    if (weakening[i] == 1) {
      return clear;
    }
    double moment = weakening[i] * momentAtTension(wood, radius, clear);
    DiscBending disc = new DiscBending(wood, radius);
    return disc.strains(disc.curvatureUnder(moment)).tension();
  }

  /**
   * True if a side of a segment at rest lies in its dead face.
   *
   * @param side from the axis outward, any length [tree frame]
   */
  boolean isDead(int i, Vector3 side) {
    if (features(i).deadFace().isEmpty() || side.norm() == 0) {
      return false;
    }
    DeadFace face = features(i).deadFace().get();
    double away = RoundAngle.of(skeleton.direction(i), side) - face.round();
    return Math.abs(Math.IEEEremainder(away, 2 * Math.PI)) <= face.width() / 2;
  }

  /** The moment at which the most stretched fibre of a whole round section comes to a strain. */
  static double momentAtTension(SegmentWood wood, double radius, double strain) {
    DiscBending disc = new DiscBending(wood, radius);
    return disc.moment(disc.curvatureAtTension(strain));
  }
}
