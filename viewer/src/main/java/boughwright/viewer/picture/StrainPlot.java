// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.Range;
import boughwright.viewer.scene.LimbStrain;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Strain along one limb against what its wood bears: stretched fibres above the line, squeezed ones
 * below it.
 */
final class StrainPlot {
  private static final double LEFT = 50;
  private static final double RIGHT = 18;
  private static final double ABOVE = 30;
  private static final double BELOW = 58;
  private static final double HEAD_ROOM = 1.12;

  /** Limits beyond this multiple of strain and median would only flatten the curves [1]. */
  private static final double MOST_BAND = 2;

  private static final double LEAST_STRAIN = 1e-4;

  /** A band that the plot cuts by less than this is as good as whole [1]. */
  private static final double CUT_OFF = 1.03;

  private static final double LEAST_WORDS = 200;
  private static final int TICKS = 7;
  private static final double TICK_ROOM = 32;
  private static final double PERCENT = 100;

  private final Page page;
  private final LimbStrain limb;
  private final Rect box;
  private final PlotScale x;
  private final PlotScale y;

  StrainPlot(Page page, LimbStrain limb, Rect room) {
    this.page = page;
    this.limb = limb;
    box =
        new Rect(
            room.x() + page.u(LEFT),
            room.y() + page.u(ABOVE),
            room.width() - page.u(LEFT) - page.u(RIGHT),
            room.height() - page.u(ABOVE) - page.u(BELOW));
    List<LimbStrain.Fibres> strains = limb.strains();
    double end = 1000 * strains.get(strains.size() - 1).at();
    x = new PlotScale(0, Math.max(end, 1), box.x(), box.right());
    double up = reach(LimbStrain.Fibres::tension, LimbStrain.Limits::crack);
    double down = reach(LimbStrain.Fibres::compression, LimbStrain.Limits::kink);
    y = new PlotScale(-PERCENT * down, PERCENT * up, box.bottom(), box.y());
  }

  /** How far one side of the plot has to reach [1]. */
  private double reach(
      ToDoubleFunction<LimbStrain.Fibres> strain, Function<LimbStrain.Limits, Range> limit) {
    double works = limb.strains().stream().mapToDouble(strain).max().orElse(0);
    double high = limb.limits().stream().mapToDouble(l -> limit.apply(l).high()).max().orElse(0);
    double middle =
        limb.limits().stream().mapToDouble(l -> limit.apply(l).middle()).max().orElse(0);
    double band = Math.min(high, MOST_BAND * Math.max(middle, works));
    return Math.max(LEAST_STRAIN, HEAD_ROOM * Math.max(works, band));
  }

  void draw() {
    page.pen().setColor(Ink.faded(Color.WHITE, 0.55));
    Rectangle2D frame = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
    page.pen().fill(frame);
    axes();
    Shape before = page.pen().getClip();
    page.pen().clip(frame);
    band(LimbStrain.Limits::crack, 1, Ink.STRETCHED);
    band(LimbStrain.Limits::kink, -1, Ink.SQUEEZED);
    yieldLine();
    zeroLine();
    curve(LimbStrain.Fibres::tension, 1, Ink.STRETCHED);
    curve(LimbStrain.Fibres::compression, -1, Ink.SQUEEZED);
    page.pen().setClip(before);
    beyond(LimbStrain.Limits::crack, y.high(), box.y() + page.u(18));
    beyond(LimbStrain.Limits::kink, -y.low(), box.bottom() - page.u(8));
    places();
  }

  /** Says how far a band reaches that the plot cuts off. */
  private void beyond(Function<LimbStrain.Limits, Range> limit, double shown, double at) {
    double high =
        PERCENT * limb.limits().stream().mapToDouble(l -> limit.apply(l).high()).max().orElse(0);
    if (high > CUT_OFF * shown && box.height() > page.u(LEAST_WORDS)) {
      page.write(
          "up to " + PlotScale.words(high, 0.1) + " %",
          box.right() - page.u(8),
          at,
          Page.Style.KEY_MORE.at(Page.Align.RIGHT));
    }
  }

  private void axes() {
    int up = (int) Math.max(4, box.height() / page.u(TICK_ROOM));
    double step = y.step(up);
    for (double tick : y.ticks(up)) {
      double at = y.at(tick);
      page.rule(new Line2D.Double(box.x(), at, box.right(), at), 0.8, Ink.FRAME);
      page.write(
          PlotScale.words(tick, step),
          box.x() - page.u(9),
          at + page.u(6),
          Page.Style.KEY_MORE.at(Page.Align.RIGHT));
    }
    double across = x.step(TICKS);
    for (double tick : x.ticks(TICKS)) {
      double at = x.at(tick);
      double foot = box.bottom();
      page.rule(new Line2D.Double(at, foot, at, foot + page.u(5)), 1.2, Ink.HAIR);
      page.write(
          PlotScale.words(tick, across),
          at,
          foot + page.u(23),
          Page.Style.KEY_MORE.at(Page.Align.MIDDLE));
    }
    page.write("strain, %", box.x() - page.u(LEFT), box.y() - page.u(12), Page.Style.KEY_MORE);
    page.write(
        limb.fromUnion() ? "mm from the union" : "mm along, from the trunk base",
        box.centreX(),
        box.bottom() + page.u(48),
        Page.Style.KEY_MORE.at(Page.Align.MIDDLE));
  }

  private void zeroLine() {
    page.rule(new Line2D.Double(box.x(), y.at(0), box.right(), y.at(0)), 1.4, Ink.HAIR);
  }

  private void band(Function<LimbStrain.Limits, Range> limit, int sign, Color colour) {
    if (limb.limits().isEmpty()) {
      return;
    }
    Path2D area = line(l -> sign * limit.apply(l).low());
    List<LimbStrain.Limits> limits = limb.limits();
    area.lineTo(box.right(), y.at(PERCENT * sign * limit.apply(last()).high()));
    for (int n = limits.size() - 1; n >= 0; n--) {
      area.lineTo(
          x.at(1000 * limits.get(n).at()),
          y.at(PERCENT * sign * limit.apply(limits.get(n)).high()));
    }
    area.lineTo(box.x(), y.at(PERCENT * sign * limit.apply(limits.get(0)).high()));
    area.closePath();
    page.pen().setColor(Ink.faded(colour, 0.16));
    page.pen().fill(area);
    stroke(line(l -> sign * limit.apply(l).middle()), 1.6, Ink.faded(colour, 0.75), 7);
  }

  private LimbStrain.Limits last() {
    return limb.limits().get(limb.limits().size() - 1);
  }

  /** A line of the limits over the whole width: what holds at the ends holds beyond them. */
  private Path2D line(ToDoubleFunction<LimbStrain.Limits> value) {
    Path2D path = new Path2D.Double();
    path.moveTo(box.x(), y.at(PERCENT * value.applyAsDouble(limb.limits().get(0))));
    for (LimbStrain.Limits limit : limb.limits()) {
      path.lineTo(x.at(1000 * limit.at()), y.at(PERCENT * value.applyAsDouble(limit)));
    }
    path.lineTo(box.right(), y.at(PERCENT * value.applyAsDouble(last())));
    return path;
  }

  private void yieldLine() {
    if (!limb.limits().isEmpty()) {
      stroke(line(l -> -l.yield()), 1.6, Ink.QUIET, 2.5);
    }
  }

  private void curve(ToDoubleFunction<LimbStrain.Fibres> strain, int sign, Color colour) {
    Path2D path = new Path2D.Double();
    for (LimbStrain.Fibres fibres : limb.strains()) {
      double px = x.at(1000 * fibres.at());
      double py = y.at(PERCENT * sign * strain.applyAsDouble(fibres));
      if (path.getCurrentPoint() == null) {
        path.moveTo(px, py);
      } else {
        path.lineTo(px, py);
      }
    }
    page.pen().setStroke(new BasicStroke((float) page.u(3), 1, BasicStroke.JOIN_ROUND));
    page.pen().setColor(colour);
    page.pen().draw(path);
  }

  private void stroke(Shape path, double width, Color colour, double dash) {
    float[] pattern = {(float) page.u(dash), (float) page.u(dash)};
    page.pen().setStroke(new BasicStroke((float) page.u(width), 0, 1, 10, pattern, 0));
    page.pen().setColor(colour);
    page.pen().draw(path);
  }

  private void places() {
    for (LimbStrain.Place place : limb.places()) {
      int sign = place.mode() == FailureMode.KINK ? -1 : 1;
      double px = Math.min(box.right(), x.at(1000 * place.at()));
      double py = y.at(PERCENT * sign * place.strain());
      Glyph.draw(
          page, Glyph.shape(place.mode(), px, py, page.u(7)), Glyph.colour(place.mode()), false);
    }
  }
}
