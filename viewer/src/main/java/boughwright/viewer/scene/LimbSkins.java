// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The skins of the limbs that a plan leaves, in one pose or another. */
final class LimbSkins {
  /** A limb that moved less than this is not drawn a second time [m]. */
  private static final double UNMOVED = 2e-4;

  /** Limbs whose axes lie nearer to each other than this cover each other [radii]. */
  private static final double SEEN_APART = 0.3;

  /** A limb with less strain than this part of the highest one is only carried along [1]. */
  private static final double BENT_SHARE = 0.1;

  private final Skeleton skeleton;
  private final List<Limb> limbs;
  private final Cutting kept;
  private final Skin.Detail detail;

  LimbSkins(Skeleton skeleton, List<Limb> limbs, Cutting kept) {
    this.skeleton = skeleton;
    this.limbs = limbs;
    this.kept = kept;
    detail = Skin.Detail.forSegments(skeleton.size());
  }

  /** What the cuts leave of each limb. */
  List<Mesh> staying(Pose pose, Optional<StrainScale> colours) {
    List<Mesh> meshes = new ArrayList<>();
    for (Limb limb : limbs) {
      Skin.Stretch stays = staying(limb);
      if (!stays.isEmpty()) {
        meshes.add(mesh(limb, stays, pose, colours));
      }
    }
    return meshes;
  }

  /** What the cuts take of each limb, as measured. */
  List<Mesh> going(Pose measured) {
    List<Mesh> meshes = new ArrayList<>();
    for (Limb limb : limbs) {
      Skin.Stretch goes = going(limb, staying(limb));
      if (!goes.isEmpty()) {
        meshes.add(mesh(limb, goes, measured, Optional.empty()));
      }
    }
    return meshes;
  }

  /** The limbs that are bent in a result, not only carried along. */
  List<Limb> bent(TrialResult result) {
    double least = BENT_SHARE * result.peak().map(Peak::bendingStrain).orElse(0.0);
    return limbs.stream()
        .filter(
            limb ->
                limb.segments().stream()
                    .flatMap(i -> result.segment(skeleton.segment(i).id()).stream())
                    .anyMatch(segment -> segment.bendingStrain() > least))
        .toList();
  }

  /** The limbs of a pose that lie elsewhere in every other one. */
  List<Mesh> moved(Pose pose, Pose... others) {
    return moved(limbs, pose, others);
  }

  /** Those of some limbs of a pose that lie elsewhere in every other one. */
  List<Mesh> moved(List<Limb> some, Pose pose, Pose... others) {
    List<Mesh> meshes = new ArrayList<>();
    for (Limb limb : some) {
      Skin.Stretch stays = staying(limb);
      if (!stays.isEmpty() && isElsewhere(limb, stays, pose, others)) {
        meshes.add(mesh(limb, stays, pose, Optional.empty()));
      }
    }
    return meshes;
  }

  /**
   * The outlines of those of some limbs of a pose that lie elsewhere than measured, from where they
   * leave the pose that is shown.
   */
  List<StagesView.Outline> outlines(List<Limb> some, Pose pose, Pose measured, Pose shown) {
    List<StagesView.Outline> outlines = new ArrayList<>();
    Skin skin = new Skin(skeleton, detail);
    for (Limb limb : some) {
      Skin.Stretch stays = staying(limb);
      if (!stays.isEmpty() && isElsewhere(limb, stays, pose, measured)) {
        List<Station> stations = skin.stations(limb, stays, pose);
        List<Station> held = skin.stations(limb, stays, shown);
        int from = 0;
        while (from < stations.size() && isOn(stations.get(from), held.get(from))) {
          from++;
        }
        List<Station> left = stations.subList(from, stations.size());
        if (left.size() > 1) {
          outlines.add(
              new StagesView.Outline(
                  left.stream().map(Station::point).toList(),
                  left.stream().map(Station::radius).toList()));
        }
      }
    }
    return outlines;
  }

  private static boolean isOn(Station one, Station other) {
    return one.point().distance(other.point()) < SEEN_APART * one.radius();
  }

  /** The end of a segment that lies farthest from where it is in another pose. */
  Optional<Point3> farthestEnd(Pose pose, Pose other) {
    Optional<Point3> farthest = Optional.empty();
    double most = UNMOVED;
    for (int i = 0; i < skeleton.size(); i++) {
      if (!kept.isGone(i)) {
        Point3 end = pose.at(i, kept.left(i)).point();
        double moved = end.distance(other.at(i, kept.left(i)).point());
        if (moved > most) {
          most = moved;
          farthest = Optional.of(end);
        }
      }
    }
    return farthest;
  }

  private Skin.Stretch staying(Limb limb) {
    return staying(limb, kept);
  }

  /** What cuts leave of a limb. */
  static Skin.Stretch staying(Limb limb, Cutting kept) {
    int count = limb.count(kept);
    return count == 0
        ? new Skin.Stretch(0, 0, 0, 0)
        : new Skin.Stretch(0, 0, count - 1, kept.left(limb.segments().get(count - 1)));
  }

  static Skin.Stretch going(Limb limb, Skin.Stretch stays) {
    int last = limb.segments().size() - 1;
    boolean endsAtNode = stays.toAlong() == 1 && stays.toSegment() < last;
    return endsAtNode
        ? new Skin.Stretch(stays.toSegment() + 1, 0, last, 1)
        : new Skin.Stretch(stays.toSegment(), stays.toAlong(), last, 1);
  }

  private Mesh mesh(Limb limb, Skin.Stretch stretch, Pose pose, Optional<StrainScale> colours) {
    List<Station> stations = new Skin(skeleton, detail).stations(limb, stretch, pose);
    int last = limb.segments().size() - 1;
    boolean whole = stretch.toSegment() == last && stretch.toAlong() == 1;
    return new SkinMesher(detail.sides(), colours)
        .close(stations, whole ? SkinMesher.End.ROUNDED : SkinMesher.End.CUT);
  }

  static boolean isElsewhere(Limb limb, Skin.Stretch stretch, Pose pose, Pose... others) {
    for (Pose other : others) {
      if (!differs(limb, stretch, pose, other)) {
        return false;
      }
    }
    return true;
  }

  private static boolean differs(Limb limb, Skin.Stretch stretch, Pose pose, Pose other) {
    for (int k = 0; k <= stretch.toSegment(); k++) {
      int i = limb.segments().get(k);
      double to = k == stretch.toSegment() ? stretch.toAlong() : 1;
      for (double u : new double[] {0, to / 2, to}) {
        if (pose.at(i, u).point().distance(other.at(i, u).point()) > UNMOVED) {
          return true;
        }
      }
    }
    return false;
  }
}
