// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.design.front.FrontGrid;
import boughwright.modeller.design.front.FrontMap;
import boughwright.viewer.scene.ScoreScale;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;

/** Two fields of colour: the score over azimuth and each of the two ways to tilt. */
final class FrontMapPlot {
  private static final double LEFT = 74;
  private static final double TITLE = 34;
  private static final double TICKS = 34;
  private static final double AXIS = 30;
  private static final double GAP = 20;
  private static final double BAR = 360;
  private static final double BAR_HEIGHT = 15;
  private static final double DOT = 13;
  private static final int AZIMUTH_TICK = 30;

  /** From row to row of the numbers beside a field, at least [pixels]. */
  private static final double ROW = 26;

  private final Page page;
  private final FrontMap map;
  private final List<FrontCard> cards;
  private final ScoreScale scale;

  FrontMapPlot(Page page, FrontMap map, List<FrontCard> cards) {
    this.page = page;
    this.map = map;
    this.cards = cards;
    scale = ScoreScale.around(map.lowest(), map.highest());
  }

  /** One of the two fields. */
  private record Field(
      String title, String more, int count, IntToDoubleFunction tilt, Scores scores, Tilt of) {}

  private interface Scores {
    double at(int azimuth, int tilt);
  }

  private interface Tilt {
    double of(FrontCard card);
  }

  /** Draws everything; gives where the legend ends [pixels]. */
  double draw(Rect room, double foot) {
    FrontGrid grid = map.grid();
    Field forward =
        new Field(
            "Tilt toward the viewer (+) or away (\u2212), degrees",
            "each the best over all tilts sideways",
            grid.forwardCount(),
            grid::tiltToward,
            map::forward,
            card -> card.pose().tiltToward());
    Field sideways =
        new Field(
            "Tilt to the right (+) or left (\u2212), degrees",
            "each the best over all tilts toward the viewer and away",
            grid.sidewaysCount(),
            grid::tiltRight,
            map::sideways,
            card -> card.pose().tiltRight());
    double half = (room.height() - page.u(AXIS + GAP)) / 2;
    field(forward, new Rect(room.x(), room.y(), room.width(), half));
    field(sideways, new Rect(room.x(), room.y() + half + page.u(GAP), room.width(), half));
    page.write(
        "Azimuth of the tree as measured that faces the viewer, degrees",
        room.x() + page.u(LEFT) + (room.width() - page.u(LEFT)) / 2,
        room.bottom() - page.u(4),
        Page.Style.KEY.at(Page.Align.MIDDLE));
    return legend(room.x(), foot);
  }

  private void field(Field field, Rect room) {
    page.write(field.title(), room.x(), room.y() + page.u(TITLE - 12), Page.Style.PANEL);
    double after = room.x() + page.width(field.title(), Page.Style.PANEL) + page.u(12);
    page.write(field.more(), after, room.y() + page.u(TITLE - 12), Page.Style.KEY_MORE);
    Rect box =
        new Rect(
            room.x() + page.u(LEFT),
            room.y() + page.u(TITLE),
            room.width() - page.u(LEFT + DOT),
            room.height() - page.u(TITLE + TICKS));
    FrontGrid grid = map.grid();
    double wide = box.width() / grid.azimuths();
    double tall = box.height() / field.count();
    for (int a = 0; a < grid.azimuths(); a++) {
      for (int t = 0; t < field.count(); t++) {
        page.pen().setColor(new Color(scale.colour(field.scores().at(a, t)).rgb()));
        double y = box.bottom() - (t + 1) * tall;
        page.pen().fill(new Rectangle2D.Double(box.x() + a * wide, y, wide + 0.6, tall + 0.6));
      }
    }
    azimuths(box, wide);
    tilts(field, box, tall);
    marks(field, box);
  }

  private void azimuths(Rect box, double wide) {
    for (int degrees = 0; degrees <= 360; degrees += AZIMUTH_TICK) {
      double x = box.x() + wide / 2 + degrees / 360.0 * box.width();
      if (x <= box.right() + wide) {
        page.rule(new Line2D.Double(x, box.bottom(), x, box.bottom() + page.u(5)), 1.2, Ink.HAIR);
        page.write(
            String.valueOf(degrees),
            x,
            box.bottom() + page.u(23),
            Page.Style.KEY_MORE.at(Page.Align.MIDDLE));
      }
    }
  }

  /** Where a tilt is on the field [pixels]. */
  private double y(Field field, Rect box, double tilt) {
    double low = field.tilt().applyAsDouble(0);
    double high = field.tilt().applyAsDouble(field.count() - 1);
    double tall = box.height() / field.count();
    double part = high > low ? (tilt - low) / (high - low) : 0.5;
    return box.bottom() - tall / 2 - part * (box.height() - tall);
  }

  private void tilts(Field field, Rect box, double tall) {
    double high = Math.toDegrees(field.tilt().applyAsDouble(field.count() - 1));
    double step = high <= 0 ? 1 : new PlotScale(-high, high, 0, 1).step(rows(box));
    for (long n = -(long) (high / step + 1e-9); n * step <= high + 1e-9; n++) {
      double at = y(field, box, Math.toRadians(n * step));
      page.rule(new Line2D.Double(box.x() - page.u(5), at, box.x(), at), 1.2, Ink.HAIR);
      String words = PlotScale.words(n * step, step);
      page.write(
          n == 0 ? words : (n > 0 ? "+" : "\u2212") + words,
          box.x() - page.u(DOT + 6),
          at + page.u(6),
          Page.Style.KEY_MORE.at(Page.Align.RIGHT));
    }
  }

  private int rows(Rect box) {
    return (int) Math.max(2, box.height() / page.u(ROW));
  }

  /** The fronts, each as a ring of paper with its number. */
  private void marks(Field field, Rect box) {
    double wide = box.width() / map.grid().azimuths();
    for (int n = cards.size() - 1; n >= 0; n--) {
      FrontCard card = cards.get(n);
      double round = card.pose().azimuth() / (2 * Math.PI);
      double x = box.x() + wide / 2 + (round - Math.floor(round)) * box.width();
      double y = y(field, box, field.of().of(card));
      double r = page.u(DOT);
      page.ink(Ink.PAPER);
      page.pen().fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
      page.ink(Ink.TEXT);
      page.pen().setStroke(new java.awt.BasicStroke((float) page.u(2)));
      page.pen().draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
      page.write(String.valueOf(n + 1), x, y + page.u(6.5), Page.Style.KEY.at(Page.Align.MIDDLE));
    }
  }

  private double legend(double left, double y) {
    double width = page.u(BAR);
    double top = y - page.u(BAR_HEIGHT) / 2;
    int columns = (int) Math.round(width);
    for (int c = 0; c < columns; c++) {
      double score = scale.low() + (scale.high() - scale.low()) * (c + 0.5) / columns;
      page.pen().setColor(new Color(scale.colour(score).rgb()));
      page.pen()
          .fill(
              new Rectangle2D.Double(
                  left + c * width / columns, top, width / columns + 1, page.u(BAR_HEIGHT)));
    }
    page.write("score, of 100", left, top - page.u(9), Page.Style.KEY);
    for (double tick : scale.ticks()) {
      double x = left + width * (tick - scale.low()) / (scale.high() - scale.low());
      double below = top + page.u(BAR_HEIGHT);
      page.rule(new Line2D.Double(x, below, x, below + page.u(5)), 1.2, Ink.HAIR);
      page.write(
          String.format(Locale.ROOT, "%.0f", 100 * tick),
          x,
          below + page.u(23),
          Page.Style.KEY_MORE.at(Page.Align.MIDDLE));
    }
    return left + width;
  }
}
