// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Stage;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A timetable gone through by one tree, as far as its poses hold. */
final class CourseRun {
  private final Scenario scenario;
  private final Skeleton skeleton;
  private final List<Moment> moments = new ArrayList<>();

  /**
   * One moment of the course.
   *
   * @param time when [s]
   * @param stage index of the stage just made; empty where one only looks
   * @param tree the tree then
   * @param result its pose
   * @param springback part of the bend that would be lost [1]
   */
  record Moment(
      double time, Optional<Integer> stage, HeldTree tree, TrialResult result, double springback) {

    /** Pull of each line, by its id [N]. */
    Map<String, Double> tensions() {
      Map<String, Double> found = new TreeMap<>();
      for (LineTrial line : result.lines()) {
        found.put(line.id(), line.tension());
      }
      return found;
    }
  }

  private CourseRun(TrialRequest request, Scenario scenario) {
    this.scenario = scenario;
    skeleton = new Skeleton(request.tree());
  }

  static CourseRun of(TrialRequest request, Timetable timetable, Scenario scenario) {
    CourseRun run = new CourseRun(request, scenario);
    HeldTree tree = null;
    double now = 0;
    for (int k = 0; k < timetable.stages().size(); k++) {
      Stage stage = timetable.stages().get(k);
      double hands = timetable.byHand() ? stage.part() : 0;
      HeldTree.Grip grip = new HeldTree.Grip(stage.part(), hands);
      if (tree == null) {
        tree = HeldTree.of(request, grip, scenario.aging());
      } else {
        tree = run.waited(tree, now, stage.after());
        if (!run.note(stage.after(), Optional.empty(), tree)) {
          return run;
        }
        tree = tree.gripped(grip);
      }
      now = stage.after();
      if (!run.note(now, Optional.of(k), tree)) {
        return run;
      }
      tree = timetable.byHand() ? tree.gripped(new HeldTree.Grip(stage.part(), 0)) : tree;
    }
    for (double look : timetable.looks()) {
      tree = run.waited(tree, now, look);
      now = look;
      if (!run.note(now, Optional.empty(), tree)) {
        return run;
      }
    }
    return run;
  }

  private HeldTree waited(HeldTree tree, double from, double to) {
    return tree.holds() ? tree.waited(to - from, scenario.grown(from, to)) : tree;
  }

  private boolean note(double time, Optional<Integer> stage, HeldTree tree) {
    TrialResult result = tree.result();
    if (!result.outcome().holds()) {
      return false;
    }
    HeldTree freed = tree.freed();
    double lost = freed.holds() ? springback(result, freed.result()) : 1;
    moments.add(new Moment(time, stage, tree, result, lost));
    return true;
  }

  /** All moments, in order. */
  List<Moment> moments() {
    return moments;
  }

  /** The tree right before a time, held on until then. */
  HeldTree at(double time) {
    Moment before = moments.get(0);
    for (Moment moment : moments) {
      before = moment.time() <= time ? moment : before;
    }
    return waited(before.tree(), before.time(), time);
  }

  /** Part of the way of the end that moves most that is lost from one pose to another. */
  private double springback(TrialResult held, TrialResult freed) {
    SegmentTrial farthest = farthest(held);
    Vector3 way = way(farthest);
    double squared = way.dot(way);
    Vector3 kept = way(freed.segment(farthest.segment()).orElseThrow());
    return squared > 0 ? Math.min(1, Math.max(0, 1 - kept.dot(way) / squared)) : 0;
  }

  private SegmentTrial farthest(TrialResult result) {
    SegmentTrial farthest = result.segments().get(0);
    for (SegmentTrial segment : result.segments()) {
      farthest = segment.endMoved(skeleton) > farthest.endMoved(skeleton) ? segment : farthest;
    }
    return farthest;
  }

  private Vector3 way(SegmentTrial segment) {
    PathSample last = segment.samples().get(segment.samples().size() - 1);
    Point3 measured = skeleton.point(skeleton.indexOf(segment.segment()), last.along());
    return last.point().minus(measured);
  }

  /** How far the end that moves most has come [m]. */
  double moved(TrialResult result) {
    return farthest(result).endMoved(skeleton);
  }

  /** Id of the segment whose end moves most. */
  String farthestEnd(TrialResult result) {
    return farthest(result).segment();
  }
}
