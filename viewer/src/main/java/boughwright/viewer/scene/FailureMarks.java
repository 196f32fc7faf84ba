// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.Risk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** Marks on the bark where the wood would fail. */
final class FailureMarks {
  /** Splits, shears and tears less likely than this are left to the words [1]. */
  private static final double WORTH_A_MARK = 0.01;

  private final Skeleton skeleton;
  private final Stand stand;
  private final Pose pose;

  FailureMarks(Skeleton skeleton, Stand stand, Pose pose) {
    this.skeleton = skeleton;
    this.stand = stand;
    this.pose = pose;
  }

  /**
   * The marks, crack and kink first: they lie close together, and their words need the room.
   *
   * @param told the segments that are told of
   */
  List<Mark> of(Risk risk, Predicate<String> told) {
    List<Mark.Failure> marks = new ArrayList<>();
    for (FailureRisk failure : risk.failures()) {
      boolean always = failure.mode() == FailureMode.CRACK || failure.mode() == FailureMode.KINK;
      boolean seen = failure.place().filter(place -> told.test(place.segment())).isPresent();
      if (seen && (always || failure.probability().high() >= WORTH_A_MARK)) {
        marks.add(mark(failure, failure.place().get(), risk.samples()));
      }
    }
    marks.sort(Comparator.comparingInt(mark -> order(mark.mode())));
    return List.copyOf(marks);
  }

  private static int order(FailureMode mode) {
    return mode == FailureMode.CRACK ? 0 : mode == FailureMode.KINK ? 1 : 2;
  }

  private Mark.Failure mark(FailureRisk failure, FailurePlace place, int samples) {
    int i = skeleton.indexOf(place.segment());
    Axis axis = pose.at(i, place.along());
    Vector3 outward = outward(failure.mode(), place, axis, skeleton.direction(i));
    double radius = Thickness.radius(skeleton.segment(i), place.along());
    Point3 bark = axis.point().plus(outward.times(radius));
    return new Mark.Failure(
        bark,
        outward,
        failure.mode(),
        List.of(
            FailureWords.name(failure.mode()) + ": " + Odds.words(failure.probability().p()),
            FailureWords.onSegment(place),
            FailureWords.distance(place)));
  }

  /** From the axis to the side that fails: for crack and kink the pose itself knows it best. */
  private Vector3 outward(FailureMode mode, FailurePlace place, Axis axis, Direction3 rest) {
    if (mode == FailureMode.CRACK && axis.tensionSide().norm() > 0) {
      return axis.tensionSide();
    }
    if (mode == FailureMode.KINK && axis.tensionSide().norm() > 0) {
      return axis.tensionSide().times(-1);
    }
    Direction3 side = stand.turn().turn(RoundAngle.direction(rest, place.round()));
    return Rotation.between(stand.turn().turn(rest), axis.direction()).turn(side).vector();
  }
}
