// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.stage.Course;
import boughwright.physics.trial.Range;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The course of a bend: when to do what, what is left afterwards, when it stays. */
final class CourseText {
  private static final double DAY = 86_400;
  private static final double WEEK = 7 * DAY;
  private static final double YEAR = 365.25 * DAY;

  /** Notes that are told without being asked for details; the most important come first. */
  private static final int MOST_NOTES = 3;

  /** Less than this part of a bend by hand held when let go is worth a word [1]. */
  private static final double MOST_HELD = 0.8;

  private final TextPage page;
  private final Course course;
  private final Optional<LocalDate> start;

  private CourseText(TextPage page, Course course, Optional<LocalDate> start) {
    this.page = page;
    this.course = course;
    this.start = start;
  }

  /**
   * Writes a course.
   *
   * @param start the day of the first pull, where the person gave one; days are shown then
   * @param details whether all notes are told, not only the most important ones
   */
  static void write(TextPage page, Course course, Optional<LocalDate> start, boolean details) {
    new CourseText(page, course, start).write(details);
  }

  private void write(boolean details) {
    if (!course.steps().isEmpty()) {
      page.heading("In stages");
      new StageTable(course, this::when).write(page);
      todo();
      page.heading("When it is taken off");
      held();
      page.table(left());
      page.inner(
          "Lost, once the wood has come to rest: best guess, and from where all goes fast to where"
              + " all goes slowly (creep, growth).");
      page.inner(stays());
      page.inner(bites());
    }
    List<String> notes = course.notes();
    page.heading(course.steps().isEmpty() ? "In stages: do not begin" : "Mind in time");
    int most = details || course.steps().isEmpty() ? notes.size() : MOST_NOTES;
    notes.stream().limit(most).forEach(page::point);
    if (notes.size() > most) {
      page.point((notes.size() - most) + " more with --details.");
    }
  }

  /** How little is held, where the hands bend it and coils and lines do not hold most of it. */
  private void held() {
    for (int n = 0; n + 1 < course.steps().size(); n++) {
      double bent = course.steps().get(n).moved();
      Course.Step next = course.steps().get(n + 1);
      if (next.act() == Course.Act.LET_GO && next.moved() < MOST_HELD * bent) {
        page.inner(
            "Only "
                + Shown.fixed(1000 * next.moved(), 0)
                + " of "
                + Shown.fixed(1000 * bent, 0)
                + " mm is held when the hands let go; what follows is of that.");
      }
    }
  }

  /** What the table does not say. */
  private void todo() {
    boolean lines = course.steps().stream().anyMatch(step -> !step.pose().lines().isEmpty());
    boolean hands = course.steps().stream().anyMatch(step -> step.act() == Course.Act.LET_GO);
    page.blank();
    if (hands) {
      page.point("Bend by hand slowly, and hold it until wire and lines are tight.");
    }
    if (lines) {
      page.point("Draw lines in slowly; one that hangs loose is drawn taut first.");
    }
    course.steps().stream()
        .filter(step -> step.act() != Course.Act.BEND && step.act() != Course.Act.TIGHTEN)
        .forEach(step -> page.point(when(step.time()) + ": " + step.words()));
  }

  private TextTable left() {
    TextTable table = new TextTable(1).row("held after the last step", "lost", "from", "to");
    for (Course.Sample sample : course.samples()) {
      if (sample.sinceLast() > 0) {
        Range lost = sample.springback();
        table.row(
            Shown.fixed(sample.sinceLast() / WEEK, 0) + " weeks",
            percent(lost.middle()),
            percent(lost.low()),
            percent(lost.high()));
      }
    }
    return table;
  }

  private static String percent(double part) {
    return Shown.fixed(100 * part, 0) + " %";
  }

  private String stays() {
    String kept = percent(course.target());
    return course.stays().likely().isPresent()
        ? kept
            + " of it stays by itself after "
            + span(course.stays())
            + ", counted from the first pull."
        : course.stays().earliest().isPresent()
            ? kept
                + " of it hardly stays by itself within two years; where all goes fast, after "
                + time(course.stays().earliest())
                + "."
            : kept + " of it does not stay by itself within two years.";
  }

  private String bites() {
    return course.bites().earliest().isPresent()
        ? "Wire, pads and loops put on at the first pull begin to bite after "
            + span(course.bites())
            + "."
        : "Nothing that is tied or wound on bites within six years of such growth.";
  }

  private static String span(Course.Span span) {
    String likely = time(span.likely());
    String earliest = time(span.earliest());
    String latest = time(span.latest());
    return likely.equals(latest) && likely.equals(earliest)
        ? likely
        : "about " + likely + ", " + earliest + " at the earliest, " + latest + " at the latest";
  }

  private static String time(OptionalDouble seconds) {
    if (seconds.isEmpty()) {
      return "several years";
    }
    double time = seconds.getAsDouble();
    if (time < DAY) {
      return "less than a day";
    }
    if (time < 2 * WEEK) {
      return Shown.fixed(time / DAY, 0) + " days";
    }
    return time < 2 * YEAR
        ? Shown.fixed(time / WEEK, 0) + " weeks"
        : Shown.fixed(time / YEAR, 1).replace(".0", "") + " years";
  }

  private String when(double seconds) {
    if (start.isPresent()) {
      return start.get().plusDays(Math.round(seconds / DAY)).toString();
    }
    return seconds == 0
        ? "at first"
        : String.format(Locale.ROOT, "day %d", Math.round(seconds / DAY));
  }
}
