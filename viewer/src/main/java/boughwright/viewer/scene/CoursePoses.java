// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.stage.Course;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which poses of a course a picture shows, and how. */
final class CoursePoses {
  /** Steps nearer to each other in time than this are done at one go [s]. */
  private static final double AT_ONE_GO = 3600;

  private final List<Course.Step> ways;
  private final Optional<Course.Step> released;

  CoursePoses(Optional<Course> course) {
    List<Course.Step> steps = course.map(Course::steps).orElse(List.of());
    released = steps.stream().filter(step -> step.act() == Course.Act.RELEASE).findFirst();
    ways =
        steps.stream()
            .takeWhile(step -> step.act() != Course.Act.RELEASE)
            .filter(step -> step.act() != Course.Act.LOOK)
            .filter(step -> step.pose().outcome().holds())
            .toList();
  }

  /** The pose that is reached in the end, held as it then is; empty without a course. */
  Optional<Course.Step> reached() {
    return ways.isEmpty() ? Optional.empty() : Optional.of(ways.get(ways.size() - 1));
  }

  /** What is left when everything is taken off, where that is part of the course and holds. */
  Optional<Course.Step> released() {
    return released.filter(step -> step.pose().outcome().holds());
  }

  /** Whether the pose that is reached was pulled further by hand and let go. */
  boolean isLetGo() {
    return reached().filter(step -> step.act() == Course.Act.LET_GO).isPresent();
  }

  /**
   * The poses on the way, in order. Of a pull by hand and what is left of it only the latter, but
   * for the last pull, which is what the wood has to bear.
   */
  List<Course.Step> onTheWay() {
    List<Course.Step> shown = new ArrayList<>();
    for (int n = 0; n + 1 < ways.size(); n++) {
      boolean last = n + 2 == ways.size();
      if (last || !isLetGoNext(n)) {
        shown.add(ways.get(n));
      }
    }
    return shown;
  }

  private boolean isLetGoNext(int n) {
    Course.Step next = ways.get(n + 1);
    return next.act() == Course.Act.LET_GO && next.time() - ways.get(n).time() < AT_ONE_GO;
  }

  /** What a pose on the way is called. */
  String words(Course.Step step) {
    int n = ways.indexOf(step);
    return n + 1 < ways.size() && isLetGoNext(n) ? "pulled by hand" : day(step);
  }

  /** What the reached pose is called. */
  String reachedWords() {
    if (isLetGo()) {
      return "held after letting go";
    }
    return onTheWay().isEmpty() ? "bent" : "bent, " + day(reached().orElseThrow());
  }

  private static String day(Course.Step step) {
    return "day " + Math.round(step.time() / Wording.DAY);
  }

  /** The result to show as bent: the trial, or what is held in the end. */
  Optional<TrialResult> shown(Optional<TrialResult> trial) {
    boolean holds = trial.filter(t -> t.outcome().holds()).isPresent();
    return holds && reached().isPresent() ? reached().map(Course.Step::pose) : trial;
  }
}
