// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.stage.Course;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.Range;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The course of a bend: when to do what, what is left afterwards, when it stays. */
final class CourseText {
  private static final double DAY = 86_400;
  private static final double WEEK = 7 * DAY;
  private static final double YEAR = 365.25 * DAY;

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
   */
  static void write(TextPage page, Course course, Optional<LocalDate> start) {
    new CourseText(page, course, start).write();
  }

  private void write() {
    page.heading("In stages");
    if (!course.steps().isEmpty()) {
      page.table(stages());
      page.inner("End moved: of the shoot that moves most. N: pull in each line, best guess.");
      page.heading("What to do");
      course.steps().forEach(step -> page.point(when(step.time()) + ": " + step.words()));
      page.heading("When it is taken off");
      page.table(left());
      page.inner(
          "Lost, once the wood has come to rest: best guess, and from where all goes fast to where"
              + " all goes slowly (creep, growth).");
      page.inner(stays());
      page.inner(bites());
    }
    page.heading("Mind in time");
    course.notes().forEach(page::point);
  }

  private TextTable stages() {
    TextTable table =
        new TextTable(2).row("when", "what", "end moved", "N before", "N after", "may break");
    for (Course.Step step : course.steps()) {
      boolean off = step.act() == Course.Act.RELEASE;
      table.row(
          when(step.time()),
          what(step),
          Shown.millimetres(step.moved()),
          step.tensionsBefore().isEmpty() ? "-" : before(step),
          off ? "off" : after(step),
          step.odds().map(odds -> Odds.words(odds.p())).orElse("-"));
    }
    return table;
  }

  private String what(Course.Step step) {
    String part = Shown.fixed(100 * step.part(), 0) + " %";
    return switch (step.act()) {
      case BEND -> "bend to " + part;
      case LET_GO -> "hands off";
      case TIGHTEN -> "draw in to " + part;
      case LOOK -> "look for marks";
      case RELEASE -> "take off";
    };
  }

  private static String before(Course.Step step) {
    return String.join(
        "/",
        step.pose().lines().stream()
            .map(line -> step.tensionsBefore().get(line.id()))
            .map(left -> left == null ? "-" : Shown.fixed(left.middle(), 1))
            .toList());
  }

  private static String after(Course.Step step) {
    String pulls =
        String.join(
            "/",
            step.pose().lines().stream()
                .map(LineTrial::tension)
                .map(pull -> Shown.fixed(pull, 1))
                .toList());
    return pulls.isEmpty() ? "-" : pulls;
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
    return "about "
        + time(span.likely())
        + ", "
        + time(span.earliest())
        + " at the earliest, "
        + time(span.latest())
        + " at the latest";
  }

  private static String time(OptionalDouble seconds) {
    if (seconds.isEmpty()) {
      return "several years";
    }
    double time = seconds.getAsDouble();
    if (time < 2 * WEEK) {
      return Shown.fixed(time / DAY, 0) + " days";
    }
    return time < 2 * YEAR
        ? Shown.fixed(time / WEEK, 0) + " weeks"
        : Shown.fixed(time / YEAR, 1) + " years";
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
