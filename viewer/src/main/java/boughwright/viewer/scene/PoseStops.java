// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.stage.Course;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The poses there are of a plan, from the tree as measured to what stays in the end.
 *
 * @param stops at least one, in order of time; the first as measured
 * @param trouble why there is no bent pose although a trial was made; empty otherwise
 */
public record PoseStops(List<Stop> stops, Optional<String> trouble) {
  /** The tree as measured alone. */
  public static final PoseStops MEASURED =
      new PoseStops(
          List.of(new Stop("as measured", Kind.MEASURED, Optional.empty())), Optional.empty());

  public PoseStops {
    stops = List.copyOf(stops);
  }

  /** What sort of pose it is. */
  public enum Kind {
    /** Before anything is done. */
    MEASURED,
    /** On the way to the bend. */
    STAGE,
    /** As the plan holds it in the end. */
    BENT,
    /** What stays when everything is taken off. */
    RELEASED
  }

  /**
   * One pose.
   *
   * @param name what it is called
   * @param kind what sort it is
   * @param result whose pose it is; empty for that as measured
   */
  public record Stop(String name, Kind kind, Optional<TrialResult> result) {}

  /** The poses of a trial and, where it is known, of its course. */
  public static PoseStops of(TrialResult trial, Optional<Course> course) {
    if (!trial.outcome().holds()) {
      return new PoseStops(MEASURED.stops(), Optional.of(SceneMaker.trouble(trial.outcome())));
    }
    CoursePoses poses = new CoursePoses(course);
    List<Stop> stops = new ArrayList<>(MEASURED.stops());
    for (Course.Step step : poses.onTheWay()) {
      stops.add(new Stop(poses.words(step), Kind.STAGE, Optional.of(step.pose())));
    }
    Optional<TrialResult> reached = poses.reached().map(Course.Step::pose);
    stops.add(
        new Stop(
            reached.isPresent() ? poses.reachedWords() : "bent",
            Kind.BENT,
            Optional.of(reached.orElse(trial))));
    poses
        .released()
        .ifPresent(
            step ->
                stops.add(
                    new Stop(
                        "released after " + Wording.time(step.time()),
                        Kind.RELEASED,
                        Optional.of(step.pose()))));
    return new PoseStops(stops, Optional.empty());
  }

  /** The number of the first stop of a sort; empty where there is none. */
  public Optional<Integer> find(Kind kind) {
    for (int n = 0; n < stops.size(); n++) {
      if (stops.get(n).kind() == kind) {
        return Optional.of(n);
      }
    }
    return Optional.empty();
  }
}
