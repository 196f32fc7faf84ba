// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.RodSection;
import boughwright.physics.wood.FibreStrains;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Reads what became of each segment from the pose of the rods. */
final class PoseReader {
  /** Samples along a piece that bends, besides its start. */
  private static final int SAMPLES = 8;

  private final TreeRods rods;
  private final Timber timber;
  private final Skeleton skeleton;
  private final RodPose pose;
  private final RodSection[] ends;

  PoseReader(TreeRods rods, RodPose pose) {
    this.rods = rods;
    this.pose = pose;
    timber = rods.timber();
    skeleton = timber.skeleton();
    ends = new RodSection[rods.spans().size()];
  }

  /**
   * All segments that are left, in file order.
   *
   * @param peak the place bent hardest, which falls between samples
   */
  List<SegmentTrial> segments(Optional<Peak> peak) {
    List<SegmentTrial> out = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      if (!timber.isGone(i)) {
        out.add(segment(i, peak));
      }
    }
    return out;
  }

  private SegmentTrial segment(int i, Optional<Peak> peak) {
    List<PathSample> samples = new ArrayList<>();
    double[] most = new double[4];
    if (peak.isPresent() && peak.get().segment().equals(skeleton.segment(i).id())) {
      most[0] = peak.get().bendingStrain();
      most[1] = peak.get().moment();
    }
    if (timber.bendsFrom(i) > 0 || timber.isBuried(i)) {
      samples.add(rigid(i, 0));
    }
    List<Integer> spans = new ArrayList<>(rods.spansOf(i));
    spans.sort(Comparator.comparingDouble(span -> rods.run(span).piece().from()));
    for (int span : spans) {
      RigidBodies.Piece piece = rods.run(span).piece();
      int steps = pose.loadedTo(span) > 0 ? SAMPLES : 1;
      for (int k = 0; k <= steps; k++) {
        double s = piece.from() + (piece.to() - piece.from()) * k / steps;
        RodSection section = pose.section(span, rods.run(span).toSpan(s));
        samples.add(sample(i, s, span, section));
        double torsion = rods.woodMoment(span, rods.run(span).toSpan(s), section).z();
        note(section, torsion, samples.get(samples.size() - 1), most);
      }
    }
    if (spans.isEmpty()) {
      samples.add(rigid(i, timber.end(i)));
    }
    PathSample first = samples.get(0);
    PathSample last = samples.get(samples.size() - 1);
    return new SegmentTrial(
        skeleton.segment(i).id(),
        first.point(),
        last.point(),
        first.direction(),
        last.direction(),
        most[0],
        most[1],
        most[2],
        most[3],
        samples);
  }

  private static void note(RodSection section, double torsion, PathSample sample, double[] most) {
    most[0] = Math.max(most[0], sample.bendingStrain());
    most[1] = Math.max(most[1], sample.moment());
    most[2] = Math.max(most[2], Math.abs(torsion));
    double axial = section.force().z();
    most[3] = Math.abs(axial) > Math.abs(most[3]) ? axial : most[3];
  }

  private PathSample sample(int i, double s, int span, RodSection section) {
    double along = s / skeleton.length(i);
    Vector3 axis = section.frame().turn(new Vector3(0, 0, 1));
    Direction3 direction =
        rods.run(span).reversed() ? axis.times(-1).direction() : axis.direction();
    double curvature = section.addedCurvature();
    Vector3 side =
        curvature > 0
            ? section.frame().turn(stretched(section).times(1 / curvature))
            : Vector3.ZERO;
    double radius = timber.woodRadius(i, s);
    FibreStrains fibres = rods.fibres(span, rods.run(span).toSpan(s), section);
    return new PathSample(
        along,
        section.position(),
        direction,
        radius,
        radius * curvature,
        fibres.tension(),
        fibres.compression(),
        side,
        rods.woodBending(span, rods.run(span).toSpan(s), section));
  }

  /** Toward the most stretched fibre, as long as the added curvature [1/m, section frame]. */
  static Vector3 stretched(RodSection section) {
    return new Vector3(-section.strain().y(), section.strain().x(), 0);
  }

  private PathSample rigid(int i, double s) {
    return new PathSample(
        s / skeleton.length(i),
        point(i, s),
        turn(i, s).turn(skeleton.direction(i)),
        timber.woodRadius(i, s),
        0,
        0,
        0,
        Vector3.ZERO,
        0);
  }

  /** Where a place of a segment has come to [m, tree frame]. */
  Point3 placeOf(int i, double s) {
    return rods.isRigid(i, s) ? point(i, s) : section(i, s).position();
  }

  /** Which way a segment's axis runs at a place, from its start to its end. */
  Direction3 directionAt(int i, double s) {
    if (rods.isRigid(i, s)) {
      return turn(i, s).turn(skeleton.direction(i));
    }
    Vector3 axis = section(i, s).frame().turn(new Vector3(0, 0, 1));
    return rods.run(rods.spanAt(i, s)).reversed() ? axis.times(-1).direction() : axis.direction();
  }

  private RodSection section(int i, double s) {
    int span = rods.spanAt(i, s);
    return pose.section(span, rods.run(span).toSpan(s));
  }

  private Rotation turn(int i, double s) {
    int span = rods.spanOfBody(i, s);
    return span < 0 ? Rotation.NONE : end(span).frame().after(rods.run(span).frame().inverse());
  }

  private Point3 point(int i, double s) {
    Point3 rest = skeleton.start(i).plus(skeleton.direction(i).times(s));
    int span = rods.spanOfBody(i, s);
    if (span < 0) {
      return rest;
    }
    TreeRods.Run run = rods.run(span);
    int j = run.piece().segment();
    Point3 restEnd = skeleton.start(j).plus(skeleton.direction(j).times(run.endOnSegment()));
    return end(span).position().plus(turn(i, s).turn(rest.minus(restEnd)));
  }

  private RodSection end(int span) {
    if (ends[span] == null) {
      ends[span] = pose.section(span, rods.spans().get(span).length());
    }
    return ends[span];
  }
}
