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

  /** Heights where words may go, from the top of the frame [1]. */
  private static final double[] HEIGHTS = {0.5, 0.4, 0.6, 0.3, 0.7, 0.15, 0.88};

  /** Places along words that are looked at. */
  private static final int PLACES = 8;

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
    plot.drawFrame(
        new TimePlot.Words(
            "Bend lost if taken off then, %",
            "nine in ten within the band", String.join(" ", SpanWords.stays(course.stays(), end))),
        course.steps());
    span(plot, end);
    plot.curve(course.samples(), s -> scaled(s.springback()), new TimePlot.Look(Ink.SPRINGBACK, 0));
    target(plot, lost);
    bites(end).ifPresent(time -> biteLine(plot, time));
    bites(end).ifPresent(time -> biteWords(plot, new Bite(time, lost)));
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

  /** The first day of biting [s], and what may be lost of a bend that counts as staying [%]. */
  private record Bite(double time, double lost) {}

  /** Beside the line, at the height that is farthest from the curve and the target. */
  private void biteWords(TimePlot plot, Bite bite) {
    Rect box = plot.box();
    double at = plot.x(bite.time());
    String words = "may bite from " + Wording.time(bite.time());
    double wide = page.width(words, Page.Style.STEP);
    boolean right = at + page.u(8) + wide <= box.right();
    double left = right ? at + page.u(6) : at - page.u(6) - wide;
    double half = page.u(6);
    double best = 0;
    double most = -1;
    for (double share : HEIGHTS) {
      double middle = box.y() + share * box.height();
      double room = Math.abs(middle - plot.y(bite.lost()));
      for (int n = 0; n <= PLACES; n++) {
        double curve = curve(plot, left + wide * n / PLACES);
        room = Math.min(room, Math.abs(middle - curve));
      }
      if (room > most) {
        most = room;
        best = middle;
      }
    }
    page.writeClear(words, left, best + half, Page.Style.STEP.in(Ink.TROUBLE));
  }

  /** How high the curve is at a place across the page [pixels]. */
  private double curve(TimePlot plot, double x) {
    List<Course.Sample> samples = course.samples();
    int n = 1;
    while (n < samples.size() - 1 && plot.x(samples.get(n).time()) < x) {
      n++;
    }
    double from = plot.x(samples.get(n - 1).time());
    double to = plot.x(samples.get(n).time());
    double part = to > from ? Math.min(1, Math.max(0, (x - from) / (to - from))) : 0;
    double low = samples.get(n - 1).springback().middle();
    double high = samples.get(n).springback().middle();
    return plot.y(PERCENT * (low + part * (high - low)));
  }
}
