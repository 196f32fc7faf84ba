// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.physics.stage.Course;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Range;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** The course of a bend for programs: days since the first pull, newtons, millimetres. */
final class CourseJson {
  private static final double DAY = 86_400;

  private final Optional<LocalDate> start;

  private CourseJson(Optional<LocalDate> start) {
    this.start = start;
  }

  /**
   * A course.
   *
   * @param start the day of the first pull, where the person gave one
   */
  static ObjectNode of(Course course, Optional<LocalDate> start) {
    return new CourseJson(start).node(course);
  }

  private ObjectNode node(Course course) {
    ObjectNode node = JsonAnswer.object();
    start.ifPresent(day -> node.put("start", day.toString()));
    node.put("reached", number(course.reached()));
    node.set("steps", JsonAnswer.list(course.steps(), this::step));
    node.set("over_time", JsonAnswer.list(course.samples(), CourseJson::sample));
    node.put("part_kept", number(course.target()));
    node.set("stays_after_days", span(course.stays()));
    node.set("bites_after_days", span(course.bites()));
    node.set("notes", JsonAnswer.words(course.notes()));
    return node;
  }

  private ObjectNode step(Course.Step step) {
    ObjectNode node = JsonAnswer.object();
    node.put("act", step.act().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("day", number(step.time() / DAY));
    start.ifPresent(day -> node.put("on", day.plusDays(Math.round(step.time() / DAY)).toString()));
    node.put("part", number(step.part()));
    node.put("end_moved_mm", number(1000 * step.moved()));
    if (!step.turns().isEmpty()) {
      ObjectNode turns = node.putObject("turns");
      new TreeMap<>(step.turns()).forEach((line, in) -> turns.put(line, number(in)));
    }
    if (!step.tensionsBefore().isEmpty()) {
      node.set("tensions_before_N", tensions(step.tensionsBefore()));
    }
    if (step.act() != Course.Act.RELEASE) {
      node.set("guy_lines", JsonAnswer.list(step.pose().lines(), CourseJson::line));
    }
    step.odds().ifPresent(odds -> node.set("breaking", RiskJson.odds(odds)));
    node.put("words", step.words());
    return node;
  }

  private static ObjectNode line(LineTrial line) {
    return JsonAnswer.object()
        .put("id", line.id())
        .put("tension_N", number(line.tension()))
        .put("shortening_mm", number(1000 * line.shortening()));
  }

  private static ObjectNode sample(Course.Sample sample) {
    ObjectNode node = JsonAnswer.object();
    node.put("day", number(sample.time() / DAY));
    node.put("days_after_last", number(sample.sinceLast() / DAY));
    node.set("tensions_N", tensions(sample.tensions()));
    node.set("springback", RiskJson.range(sample.springback()));
    return node;
  }

  private static ObjectNode tensions(Map<String, Range> tensions) {
    ObjectNode node = JsonAnswer.object();
    new TreeMap<>(tensions).forEach((line, range) -> node.set(line, RiskJson.range(range)));
    return node;
  }

  /** A time that is not known to come is absent. */
  static ObjectNode span(Course.Span span) {
    ObjectNode node = JsonAnswer.object();
    put(node, "earliest", span.earliest());
    put(node, "likely", span.likely());
    put(node, "latest", span.latest());
    return node;
  }

  private static void put(ObjectNode node, String name, OptionalDouble seconds) {
    seconds.ifPresent(time -> node.put(name, number(time / DAY)));
  }
}
