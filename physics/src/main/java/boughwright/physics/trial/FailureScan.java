// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.physics.hold.CoiledSection;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.RodSection;
import boughwright.physics.wood.FibreStrains;
import boughwright.physics.wood.SegmentWood;
import java.util.Arrays;
import java.util.List;

/**
 * Looks along all wood that is bent for the place nearest to each way of failing, limb by limb,
 * against median limits. Limits are those of docs/theory/risk.md.
 */
final class FailureScan {
  /** Part of an element by which its end is looked at from inside [1]. */
  private static final double JUST_BEFORE = 1e-9;

  private final TreeRods rods;
  private final Timber timber;
  private final RodPose pose;
  private final WoodState state;
  private final Nearest[][] found;

  private FailureScan(TreeRods rods, RodPose pose, WoodState state) {
    this.rods = rods;
    timber = rods.timber();
    this.pose = pose;
    this.state = state;
    found = new Nearest[FailureMode.values().length][state.limbs().count()];
    for (Nearest[] limbs : found) {
      Arrays.fill(limbs, Nearest.NONE);
    }
  }

  /** The nearest places, shape (ways of failing, limbs). */
  static Nearest[][] of(TreeRods rods, RodPose pose, WoodState state) {
    FailureScan scan = new FailureScan(rods, pose, state);
    for (int span = 0; span < rods.spans().size(); span++) {
      int i = rods.run(span).piece().segment();
      if (pose.loadedTo(span) > 0 && !rods.timber().wood(i).isElastic()) {
        scan.along(span);
      }
    }
    return scan.found;
  }

  private void along(int span) {
    List<Double> stations = pose.stations(span);
    for (int k = 0; k + 1 < stations.size(); k++) {
      double from = stations.get(k);
      double to = stations.get(k + 1);
      look(span, from);
      look(span, (from + to) / 2);
      // at a pad the moment jumps, and the section there is the one beyond it
      look(span, to - JUST_BEFORE * (to - from));
    }
    new UnionScan(rods, pose, state).of(span).ifPresent(near -> note(FailureMode.TEAR, span, near));
  }

  private void note(FailureMode mode, int span, Nearest near) {
    int limb = state.limbs().of(rods.run(span).piece().segment());
    Nearest[] limbs = found[mode.ordinal()];
    limbs[limb] = limbs[limb].or(near);
  }

  private void look(int span, double s) {
    RodSection section = pose.section(span, s);
    TreeRods.Run run = rods.run(span);
    int i = run.piece().segment();
    double along = run.toSegment(s);
    double radius = timber.woodRadius(i, along);
    SegmentWood wood = timber.wood(i);
    Vector3 stretched = run.frame().turn(PoseReader.stretched(section));
    FibreStrains strains = rods.fibres(span, s, section);
    double crack = state.crackStrain(i, wood, radius);
    if (state.isDead(i, stretched)) {
      crack = Math.min(crack, state.prior().deadCrackStrain());
    }
    note(FailureMode.CRACK, span, Nearest.of(strains.tension(), crack, span, s, stretched));
    note(
        FailureMode.KINK,
        span,
        Nearest.of(
            strains.compression(),
            state.prior().kinkOverYield() * wood.yieldStrain(),
            span,
            s,
            stretched.times(-1)));
    shear(span, s, section, stretched);
    split(span, s, section, stretched);
  }

  /**
   * Greatest shear stress of a round bar over the modulus: 4 V / (3 A) from the shear force at the
   * middle, and 2 T / (pi r^3) from torsion at the surface, which meet at the flanks (Gere and
   * Timoshenko, Mechanics of Materials; from memory).
   */
  private void shear(int span, double s, RodSection section, Vector3 stretched) {
    TreeRods.Run run = rods.run(span);
    int i = run.piece().segment();
    double radius = timber.woodRadius(i, run.toSegment(s));
    double across =
        woodPart(span, s, section) * Math.hypot(section.force().x(), section.force().y());
    double cube = Math.PI * radius * radius * radius;
    double torsion = rods.woodMoment(span, s, section).z();
    double stress = 4 * across * radius / (3 * cube) + 2 * Math.abs(torsion) / cube;
    Vector3 axis = run.frame().turn(new Vector3(0, 0, 1));
    Vector3 flank = stretched.norm() > 0 ? axis.cross(stretched) : Vector3.ZERO;
    note(
        FailureMode.SHEAR,
        span,
        Nearest.of(
            stress / timber.wood(i).moe(),
            state.prior().shearOverMoe(2 * radius),
            span,
            s,
            flank.norm() > 0 ? flank : run.frame().turn(new Vector3(1, 0, 0))));
  }

  /**
   * The wood's part of the shear force, which beside a coil is its part of the bending stiffness
   * [1].
   */
  private double woodPart(int span, double s, RodSection section) {
    if (!(rods.section(span, s) instanceof CoiledSection coiled)) {
      return 1;
    }
    double wood = rods.woodBending(span, s, section);
    double whole = Math.hypot(section.moment().x(), section.moment().y());
    return wood > 0 && whole > 0
        ? Math.min(1, wood / whole)
        : coiled.wood().stiffnessAtRest() / coiled.stiffnessAtRest();
  }

  /**
   * Tension across the grain at mid-depth of a limb that grew with curvature k0 and is bent to k: E
   * r^2 k (k0 - k) / 3, the largest on the way counts, which is half-way to straight. Wood that
   * flows carries less, in the proportion of its moment. A wrap presses the wood together first.
   */
  private void split(int span, double s, RodSection section, Vector3 stretched) {
    TreeRods.Run run = rods.run(span);
    int i = run.piece().segment();
    double along = run.toSegment(s);
    Vector3 grown = state.rest().at(i, along).times(run.reversed() ? -1 : 1);
    Vector3 added = run.frame().turn(new Vector3(section.strain().x(), section.strain().y(), 0));
    double opposed = -grown.dot(added);
    double squared = added.dot(added);
    if (!(opposed > 0 && squared > 0)) {
      return;
    }
    double part = Math.min(1, opposed / (2 * squared));
    double product = part * opposed - part * part * squared;
    double radius = timber.woodRadius(i, along);
    double elastic = timber.wood(i).moe() * Math.PI / 4 * Math.pow(radius, 4) * Math.sqrt(squared);
    double carried = Math.min(1, rods.woodBending(span, s, section) / elastic);
    double wrap = timber.aids().pressure(i, along, radius) / timber.wood(i).moe();
    double limit = state.weakening(i) * state.prior().acrossOverMoe(2 * radius) + wrap;
    note(
        FailureMode.SPLIT,
        span,
        Nearest.of(carried * radius * radius * product / 3, limit, span, s, stretched));
  }
}
