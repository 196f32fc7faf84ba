// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.stage.Course;
import boughwright.physics.trial.Range;
import boughwright.viewer.scene.Wording;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;

/** The part of the bend that would be lost if everything were taken off, over time. */
final class SpringbackPlot {
  private static final double PERCENT = 100;
  private static final double HEAD_ROOM = 1.06;
  private static final double LEAST_HIGH = 10;

  /** At the start of the plot the curve is high, so no words go there [1]. */
  private static final double CURVE_SHARE = 0.12;

  private final Page page;
  private final Course course;

  SpringbackPlot(Page page, Course course) {
    this.page = page;
    this.course = course;
  }

  void draw(Rect room, double end) {
    double most =
        course.samples().stream().mapToDouble(s -> PERCENT * s.springback().high()).max().orElse(0);
    double lost = PERCENT * (1 - course.target());
    double high = HEAD_ROOM * Math.max(LEAST_HIGH, Math.max(most, 1.2 * lost));
    TimePlot plot = new TimePlot(page, new TimePlot.Place(room, page.u(14)), end, high);
    plot.drawFrame("Bend lost if taken off then, %", "nine in ten within the band", course.steps());
    span(plot, end);
    plot.curve(course.samples(), s -> scaled(s.springback()), new TimePlot.Look(Ink.SPRINGBACK, 0));
    target(plot, lost);
    bites(end).ifPresent(time -> biteLine(plot, time));
    stays(plot, end);
    bites(end).ifPresent(time -> biteWords(plot, time));
  }

  private static Range scaled(Range part) {
    return new Range(PERCENT * part.low(), PERCENT * part.middle(), PERCENT * part.high());
  }

  /** When it stays, as far as that is within the times shown. */
  private void span(TimePlot plot, double end) {
    Course.Span stays = course.stays();
    Rect box = plot.box();
    if (stays.earliest().isPresent()) {
      double from = plot.x(Math.min(end, stays.earliest().getAsDouble()));
      double to = plot.x(Math.min(end, stays.latest().orElse(end)));
      page.pen().setColor(Ink.faded(Ink.APEX, 0.10));
      page.pen().fill(new Rectangle2D.Double(from, box.y(), to - from, box.height()));
    }
    if (stays.likely().orElse(Double.POSITIVE_INFINITY) <= end) {
      double at = plot.x(stays.likely().getAsDouble());
      page.rule(new Line2D.Double(at, box.y(), at, box.bottom()), 2, Ink.APEX);
    }
  }

  private void target(TimePlot plot, double lost) {
    double y = plot.y(lost);
    page.dashes(new Line2D.Double(plot.box().x(), y, plot.box().right(), y), 1.6, Ink.APEX);
    String words = "stays below " + PlotScale.words(lost, lost < 10 ? 0.1 : 1) + " %";
    page.writeClear(words, plot.box().x() + page.u(8), y - page.u(6), Page.Style.STEP.in(Ink.APEX));
  }

  /** Says when it stays: before that time, on two lines if need be; else at the upper right. */
  private void stays(TimePlot plot, double end) {
    List<String> words = SpanWords.stays(course.stays(), end);
    Rect box = plot.box();
    double before = plot.x(Math.min(end, course.stays().earliest().orElse(end))) - page.u(8);
    double room = before - box.x() - CURVE_SHARE * box.width();
    String whole = String.join(" ", words);
    if (width(whole) <= room) {
      lines(List.of(whole), before, box);
    } else if (words.stream().allMatch(line -> width(line) <= room)) {
      lines(words, before, box);
    } else {
      lines(words, box.right() - page.u(8), box);
    }
  }

  /** When wire, pads and loops begin to bite, where that comes before everything is off [s]. */
  private OptionalDouble bites(double end) {
    double off =
        course.steps().stream()
            .filter(step -> step.act() == Course.Act.RELEASE)
            .mapToDouble(Course.Step::time)
            .findFirst()
            .orElse(end);
    double first = course.bites().earliest().orElse(Double.POSITIVE_INFINITY);
    return first <= off ? OptionalDouble.of(first) : OptionalDouble.empty();
  }

  private void biteLine(TimePlot plot, double time) {
    double at = plot.x(time);
    page.dashes(new Line2D.Double(at, plot.box().y(), at, plot.box().bottom()), 1.8, Ink.TROUBLE);
  }

  private void biteWords(TimePlot plot, double time) {
    Rect box = plot.box();
    double at = plot.x(time);
    String words = "may bite from " + Wording.time(time);
    double wide = width(words);
    boolean right = at + page.u(8) + wide <= box.right();
    page.writeClear(
        words,
        right ? at + page.u(6) : at - page.u(6) - wide,
        box.y() + 0.55 * box.height(),
        Page.Style.STEP.in(Ink.TROUBLE));
  }

  private double width(String words) {
    return page.width(words, Page.Style.STEP);
  }

  private void lines(List<String> words, double right, Rect box) {
    double y = box.y() + page.u(18);
    double size = page.u(Page.Style.STEP.size());
    for (String line : words) {
      double most = right - box.x() - page.u(8);
      String fitted = Lettering.fitted(line, Page.Style.STEP.weight(), size, most);
      page.writeClear(fitted, right - width(fitted), y, Page.Style.STEP.in(Ink.APEX));
      y += page.u(18);
    }
  }
}
