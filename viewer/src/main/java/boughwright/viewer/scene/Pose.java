// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Where the axis of every limb lies, in the scene frame: as measured, or as bent by a trial. */
public final class Pose {
  private final Stand stand;
  private final Map<Integer, double[]> prints = new ConcurrentHashMap<>();
  private final List<Axis.Curve> curves = new ArrayList<>();
  private final int[] limbOf;
  private final int[] placeInLimb;

  private Pose(Skeleton skeleton, List<Limb> limbs, Stand stand) {
    this.stand = stand;
    limbOf = new int[skeleton.size()];
    placeInLimb = new int[skeleton.size()];
    for (int n = 0; n < limbs.size(); n++) {
      for (int k = 0; k < limbs.get(n).segments().size(); k++) {
        limbOf[limbs.get(n).segments().get(k)] = n;
        placeInLimb[limbs.get(n).segments().get(k)] = k;
      }
    }
  }

  private Pose(Pose alike) {
    stand = alike.stand;
    limbOf = alike.limbOf;
    placeInLimb = alike.placeInLimb;
  }

  static Pose measured(Skeleton skeleton, List<Limb> limbs, Stand stand) {
    Pose pose = new Pose(skeleton, limbs, stand);
    for (Limb limb : limbs) {
      pose.curves.add(new RestAxis(new RestCurve(skeleton, limb), limb.segments().size()));
    }
    return pose;
  }

  static Pose bent(Skeleton skeleton, List<Limb> limbs, Stand stand, TrialResult trial) {
    Pose pose = new Pose(skeleton, limbs, stand);
    Map<String, SegmentTrial> byId = new HashMap<>();
    trial.segments().forEach(segment -> byId.put(segment.segment(), segment));
    for (Limb limb : limbs) {
      List<SegmentTrial> run = new ArrayList<>();
      for (int i : limb.segments()) {
        Optional.ofNullable(byId.get(skeleton.segment(i).id())).ifPresent(run::add);
      }
      pose.curves.add(new BentCurve(skeleton, limb, run));
    }
    return pose;
  }

  /** A limb as measured. */
  private record RestAxis(RestCurve rest, int count) implements Axis.Curve {
    @Override
    public Axis at(int k, double u) {
      return new Axis(rest.point(k, u), rest.slope(k, u).direction(), 0, Vector3.ZERO);
    }
  }

  /** Part of the way from one curve to another. */
  private record Between(Axis.Curve from, Axis.Curve to, double part) implements Axis.Curve {
    @Override
    public Axis at(int k, double u) {
      return from.at(k, u).toward(to.at(k, u), part);
    }

    @Override
    public int count() {
      return Math.min(from.count(), to.count());
    }
  }

  /**
   * A pose part of the way from this one to another of the same tree; each limb that is whole in
   * both.
   */
  Pose between(Pose other, double part) {
    Pose pose = new Pose(this);
    for (int n = 0; n < curves.size(); n++) {
      pose.curves.add(new Between(curves.get(n), other.curves.get(n), part));
    }
    return pose;
  }

  /**
   * What tells the limb of a segment in this pose from the same limb in others.
   *
   * @see Axis.Curve#print
   */
  double[] print(int segment) {
    return prints.computeIfAbsent(limbOf[segment], n -> curves.get(n).print());
  }

  /** The axis at a fraction of a segment that is there in this pose. */
  Axis at(int segment, double along) {
    return stand.place(curves.get(limbOf[segment]).at(placeInLimb[segment], along));
  }
}
