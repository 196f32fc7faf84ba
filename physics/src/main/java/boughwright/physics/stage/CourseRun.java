// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.plan.Stage;
import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.TrialRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A timetable gone through by one tree, as far as its poses hold. */
final class CourseRun {
  private final Scenario scenario;
  private final FarEnd end;
  private final List<Moment> moments = new ArrayList<>();

  /**
   * One moment of the course.
   *
   * @param time when [s]
   * @param stage index of the stage just made; empty where one only looks
   * @param tree the tree then
   * @param springback part of the bend that would be lost [1]
   */
  record Moment(double time, Optional<Integer> stage, HeldTree tree, double springback) {}

  private CourseRun(Scenario scenario, FarEnd end) {
    this.scenario = scenario;
    this.end = end;
  }

  /**
   * Goes through it.
   *
   * @param request the plan
   * @param end by which the bend is told
   */
  static CourseRun of(TrialRequest request, FarEnd end, Timetable timetable, Scenario scenario) {
    CourseRun run = new CourseRun(scenario, end);
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
      if (timetable.byHand()) {
        tree = tree.gripped(new HeldTree.Grip(stage.part(), 0));
        if (!run.note(now, Optional.empty(), tree)) {
          return run;
        }
      }
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
    if (!tree.holds()) {
      return false;
    }
    HeldTree freed = tree.freed();
    double lost = freed.holds() ? end.lost(tree, freed) : 1;
    moments.add(new Moment(time, stage, tree, lost));
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
}
