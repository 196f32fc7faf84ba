// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.grow.GrowthCalendar;
import boughwright.physics.grow.WireBite;
import boughwright.physics.grow.YearlyRing;
import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.Probability;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What the person does in a course that has been gone through. */
final class CourseSteps {
  private final FarEnd end;
  private final CourseBand band;
  private final Timetable timetable;
  private final Means means;
  private final List<TrialResult> poses;
  private final StepTurns turns;
  private OptionalDouble look = OptionalDouble.empty();

  CourseSteps(TrialRequest request, FarEnd end, CourseBand band, Timetable timetable) {
    this.end = end;
    this.band = band;
    this.timetable = timetable;
    means = Means.of(request.proposals());
    poses =
        band.middle().moments().subList(0, band.moments()).stream()
            .filter(moment -> moment.stage().isPresent())
            .map(moment -> moment.tree().result())
            .toList();
    turns = new StepTurns(request, poses);
  }

  /** Lines that cannot be turned so far, each a sentence. */
  List<String> jams() {
    return turns.jams();
  }

  /** When coils, pads and loops begin to bite; they are taken to lie snug. */
  Course.Span bites(YearlyRing ring, GrowthCalendar calendar) {
    WireBite bite = WireBite.of(ring, calendar, 0);
    look = bite.look();
    return new Course.Span(bite.earliest(), bite.likely(), bite.latest());
  }

  /**
   * All steps, in order of time.
   *
   * @param odds what a pose risks
   * @param stays when it stays by itself
   * @param bites when wire bites
   */
  List<Course.Step> all(
      Function<TrialResult, Optional<Probability>> odds, Course.Span stays, Course.Span bites) {
    List<Course.Step> steps = new ArrayList<>();
    for (int m = 0; m < band.moments(); m++) {
      CourseRun.Moment moment = band.middle().moments().get(m);
      if (moment.stage().isPresent()) {
        addStage(steps, m, odds);
      }
    }
    if (!means.hold()) {
      return steps;
    }
    Optional<Double> off = off(stays);
    if (look.isPresent() && (off.isEmpty() || look.getAsDouble() < off.get())) {
      steps.add(look(bites));
    }
    off.ifPresent(time -> steps.add(release(time)));
    steps.sort(Comparator.comparingDouble(Course.Step::time));
    return steps;
  }

  private void addStage(
      List<Course.Step> steps, int m, Function<TrialResult, Optional<Probability>> odds) {
    CourseRun.Moment moment = band.middle().moments().get(m);
    int stage = moment.stage().orElseThrow();
    double part = timetable.stages().get(stage).part();
    Map<String, Range> before = stage == 0 ? Map.of() : band.tensions(m - 1);
    Course.Act act = stage == 0 ? Course.Act.BEND : Course.Act.TIGHTEN;
    TrialResult pose = poses.get(stage);
    CourseWords.Now now =
        new CourseWords.Now(part, timetable.byHand(), means, line -> turns.said(stage, line));
    String words =
        stage == 0 ? CourseWords.bend(pose, now) : CourseWords.tighten(pose, now, before);
    steps.add(
        new Course.Step(
            act,
            moment.time(),
            part,
            pose,
            end.moved(moment.tree()),
            turns.in(stage),
            before,
            odds.apply(pose),
            words));
    if (timetable.byHand() && m + 1 < band.moments()) {
      steps.add(letGo(moment, band.middle().moments().get(m + 1)));
    }
  }

  /** Part of the last bend by hand that stays when the hands let go; 1 where no hands are [1]. */
  double keptByHolders() {
    double kept = 1;
    for (int m = 0; m + 1 < band.moments() && timetable.byHand(); m++) {
      CourseRun.Moment bent = band.middle().moments().get(m);
      if (bent.stage().isPresent()) {
        kept = 1 - end.lost(bent.tree(), band.middle().moments().get(m + 1).tree());
      }
    }
    return kept;
  }

  private Course.Step letGo(CourseRun.Moment bent, CourseRun.Moment held) {
    double kept = 1 - end.lost(bent.tree(), held.tree());
    return step(Course.Act.LET_GO, held.time(), held.tree(), CourseWords.letGo(kept, means.hold()));
  }

  /** The day it comes off: as planned, else the first whole week in which it likely stays. */
  private Optional<Double> off(Course.Span stays) {
    if (!band.isWhole()) {
      return Optional.empty();
    }
    if (timetable.release().isPresent()) {
      return Optional.of(timetable.release().getAsDouble());
    }
    return stays.likely().isPresent()
        ? Optional.of(Courses.weeks(stays.likely().getAsDouble()))
        : Optional.empty();
  }

  private Course.Step look(Course.Span bites) {
    double time = look.getAsDouble();
    return step(Course.Act.LOOK, time, band.middle().at(time), CourseWords.look(bites, means));
  }

  private Course.Step release(double time) {
    HeldTree free = band.middle().at(time).freed();
    return step(
        Course.Act.RELEASE, time, free, CourseWords.release(band.springbackAt(time), means));
  }

  private Course.Step step(Course.Act act, double time, HeldTree tree, String words) {
    return new Course.Step(
        act,
        time,
        act == Course.Act.RELEASE ? 0 : partAt(time),
        tree.result(),
        end.moved(tree),
        Map.of(),
        Map.of(),
        Optional.empty(),
        words);
  }

  private double partAt(double time) {
    return timetable.stages().stream()
        .filter(stage -> stage.after() <= time)
        .reduce((first, second) -> second)
        .orElseThrow()
        .part();
  }
}
