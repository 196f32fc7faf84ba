// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.trial.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Three runs of one timetable side by side: slow, best guess, fast. */
final class CourseBand {
  private final List<CourseRun> runs;
  private final Timetable timetable;
  private final int moments;

  CourseBand(List<CourseRun> runs, Timetable timetable) {
    this.runs = runs;
    this.timetable = timetable;
    moments = runs.stream().mapToInt(run -> run.moments().size()).min().orElseThrow();
  }

  /** The best guess. */
  CourseRun middle() {
    return runs.get(1);
  }

  /** Moments that all three came to. */
  int moments() {
    return moments;
  }

  /** True if all stages and looks were gone through by all. */
  boolean isWhole() {
    int stages = timetable.stages().size();
    int letGo = timetable.byHand() ? stages : 0;
    return moments == 2 * stages - 1 + letGo + timetable.looks().size();
  }

  /** Part of the plan's bends that the last stage gone through comes to [1]. */
  double reached() {
    double part = 0;
    for (CourseRun.Moment moment : middle().moments().subList(0, moments)) {
      part = moment.stage().map(k -> timetable.stages().get(k).part()).orElse(part);
    }
    return part;
  }

  private Range range(int moment, ToDoubleFunction<CourseRun.Moment> value) {
    return range(
        runs.stream().mapToDouble(run -> value.applyAsDouble(run.moments().get(moment))).toArray());
  }

  private static Range range(double[] three) {
    double middle = three[1];
    return new Range(
        Math.min(middle, Math.min(three[0], three[2])),
        middle,
        Math.max(middle, Math.max(three[0], three[2])));
  }

  /** Pull of each line, by its id [N]. */
  Map<String, Range> tensions(int moment) {
    Map<String, Range> found = new TreeMap<>();
    for (String line : middle().moments().get(moment).tree().tensions().keySet()) {
      found.put(line, range(moment, one -> one.tree().tensions().get(line)));
    }
    return found;
  }

  Range springback(int moment) {
    return range(moment, CourseRun.Moment::springback);
  }

  List<Course.Sample> samples() {
    List<Course.Sample> samples = new ArrayList<>();
    for (int m = 0; m < moments; m++) {
      double time = middle().moments().get(m).time();
      samples.add(new Course.Sample(time, time - timetable.last(), tensions(m), springback(m)));
    }
    return samples;
  }

  /** When a part of the bend stays. */
  Course.Span stays(double target) {
    return new Course.Span(
        stays(runs.get(2), target), stays(runs.get(1), target), stays(runs.get(0), target));
  }

  private OptionalDouble stays(CourseRun run, double target) {
    CourseRun.Moment before = null;
    for (CourseRun.Moment moment : run.moments()) {
      if (moment.time() < timetable.last() || before == null && moment.stage().isEmpty()) {
        continue;
      }
      if (moment.springback() <= 1 - target) {
        return OptionalDouble.of(before == null ? moment.time() : between(before, moment, target));
      }
      before = moment;
    }
    return OptionalDouble.empty();
  }

  private static double between(CourseRun.Moment a, CourseRun.Moment b, double target) {
    double part = (a.springback() - (1 - target)) / (a.springback() - b.springback());
    return a.time() + part * (b.time() - a.time());
  }

  /** Springback at a time, between the moments there are. */
  Range springbackAt(double time) {
    double[] three = new double[3];
    for (int r = 0; r < 3; r++) {
      List<CourseRun.Moment> all = runs.get(r).moments();
      CourseRun.Moment before = all.get(0);
      CourseRun.Moment after = all.get(all.size() - 1);
      for (CourseRun.Moment moment : all) {
        before = moment.time() <= time ? moment : before;
      }
      for (int m = all.size() - 1; m >= 0 && all.get(m).time() >= time; m--) {
        after = all.get(m);
      }
      double length = after.time() - before.time();
      double part = length > 0 ? (time - before.time()) / length : 0;
      three[r] = before.springback() + part * (after.springback() - before.springback());
    }
    return range(three);
  }
}
