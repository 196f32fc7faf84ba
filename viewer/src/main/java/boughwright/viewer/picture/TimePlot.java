// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.stage.Course;
import boughwright.physics.trial.Range;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Function;

/** A frame for what goes on over time: axes, what is done when, and curves with their bands. */
final class TimePlot {
  private static final double LEFT = 44;
  private static final double TITLE = 24;
  private static final double STEPS = 24;

  /** A row between the title and what is done when. */
  private static final double SAID = 20;

  private static final double TICKS = 26;
  private static final double TICK_ROOM = 23;
  private static final double TICK_GAP = 14;
  private static final double BAND = 0.15;

  private final Page page;
  private final Rect box;
  private final TimeScale x;
  private final PlotScale y;

  /**
   * Where a plot stands.
   *
   * @param room all the room it has, words included
   * @param right room for words to the right of the frame [pixels]
   */
  record Place(Rect room, double right) {}

  /**
   * @param end the last time shown [s]
   * @param high the highest value shown
   */
  TimePlot(Page page, Place place, double end, double high) {
    this.page = page;
    Rect room = place.room();
    box =
        new Rect(
            room.x() + page.u(LEFT),
            room.y() + page.u(TITLE + SAID + STEPS),
            room.width() - page.u(LEFT) - place.right(),
            room.height() - page.u(TITLE + SAID + STEPS + TICKS));
    x = new TimeScale(end, box.x(), box.right());
    y = new PlotScale(0, high, box.bottom(), box.y());
  }

  Rect box() {
    return box;
  }

  double x(double time) {
    return x.at(time);
  }

  double y(double value) {
    return y.at(value);
  }

  /**
   * The words over a plot.
   *
   * @param title what is shown
   * @param unit more of that, where there is room
   * @param said what the plot comes to, blank for nothing
   */
  record Words(String title, String unit, String said) {}

  /** Draws everything that lies behind the curves. */
  void drawFrame(Words words, List<Course.Step> steps) {
    double left = box.x() - page.u(LEFT);
    double top = box.y() - page.u(SAID + STEPS + 4);
    drawTitle(words.title(), words.unit(), new Point2D.Double(left, top));
    String said = fitted(words.said(), Page.Style.STEP, box.right() - left);
    page.write(said, left, top + page.u(SAID), Page.Style.STEP.in(Ink.APEX));
    page.pen().setColor(Ink.faded(Color.WHITE, 0.55));
    page.pen().fill(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
    values();
    times();
    new StepMarks(page, box, x, left + page.width(said, Page.Style.STEP)).draw(steps);
  }

  private void drawTitle(String title, String unit, Point2D at) {
    double left = at.getX();
    double top = at.getY();
    String first = fitted(title, Page.Style.PANEL, box.right() - left);
    page.write(first, left, top, Page.Style.PANEL);
    double after = left + page.width(first, Page.Style.PANEL) + page.u(10);
    if (after + page.width(unit, Page.Style.KEY_MORE) <= box.right()) {
      page.write(unit, after, top, Page.Style.KEY_MORE);
    }
  }

  private String fitted(String words, Page.Style style, double width) {
    return Lettering.fitted(words, style.weight(), page.u(style.size()), width);
  }

  private void values() {
    int most = (int) Math.max(2, box.height() / page.u(TICK_ROOM));
    double step = y.step(most);
    for (double tick : y.ticks(most)) {
      double at = y.at(tick);
      page.rule(
          new Line2D.Double(box.x(), at, box.right(), at),
          tick == 0 ? 1.4 : 0.8,
          tick == 0 ? Ink.HAIR : Ink.FRAME);
      page.write(
          PlotScale.words(tick, step),
          box.x() - page.u(9),
          at + page.u(6),
          Page.Style.KEY_MORE.at(Page.Align.RIGHT));
    }
  }

  private void times() {
    double foot = box.bottom();
    for (TimeScale.Tick tick :
        x.ticks(words -> page.width(words, Page.Style.KEY_MORE), page.u(TICK_GAP))) {
      double at = x.at(tick.time());
      page.rule(new Line2D.Double(at, foot, at, foot + page.u(5)), 1.2, Ink.HAIR);
      page.write(tick.words(), at, foot + page.u(22), Page.Style.KEY_MORE.at(Page.Align.MIDDLE));
    }
  }

  /**
   * How a curve is drawn.
   *
   * @param colour its colour
   * @param dash length of its dashes, 0 for a full line [pixels of the default page]
   */
  record Look(Color colour, double dash) {}

  /** Draws a curve and its band, cut off at the frame. */
  void curve(List<Course.Sample> samples, Function<Course.Sample, Range> value, Look look) {
    Shape before = page.pen().getClip();
    page.pen().clip(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
    Path2D band = new Path2D.Double();
    Path2D middle = new Path2D.Double();
    for (Course.Sample sample : samples) {
      to(band, sample, value.apply(sample).low());
      to(middle, sample, value.apply(sample).middle());
    }
    for (int n = samples.size() - 1; n >= 0; n--) {
      to(band, samples.get(n), value.apply(samples.get(n)).high());
    }
    if (samples.size() > 1) {
      band.closePath();
      page.pen().setColor(Ink.faded(look.colour(), BAND));
      page.pen().fill(band);
      page.pen().setColor(look.colour());
      page.pen().setStroke(stroke(look.dash()));
      page.pen().draw(middle);
    }
    page.pen().setClip(before);
  }

  private BasicStroke stroke(double dash) {
    float width = (float) page.u(2.6);
    if (dash == 0) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] pattern = {(float) page.u(dash), (float) page.u(dash / 2)};
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
  }

  private void to(Path2D path, Course.Sample sample, double value) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x.at(sample.time()), y.at(value));
    } else {
      path.lineTo(x.at(sample.time()), y.at(value));
    }
  }
}
