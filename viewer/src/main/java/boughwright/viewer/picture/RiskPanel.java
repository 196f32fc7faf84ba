// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.RiskView;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;

/** What the wood bears along its hardest working limb, beside or under the views. */
final class RiskPanel {
  private static final double WIDTH = 540;
  private static final double HEIGHT = 420;
  private static final double MOST_HEIGHT = 600;
  private static final double HEIGHT_SHARE = 0.27;
  private static final double GAP = 40;

  /** Of the width of a page, at most this [1]. */
  private static final double MOST_WIDTH = 0.35;

  /** Wider pages than this have it beside the views: width over height [1]. */
  private static final double WIDE = 1.15;

  private static final double TITLE = 34;
  private static final double KEY = 92;
  private static final double LEAST_PLOT = 150;
  private static final double MOST_PLOT = 440;

  private final Page page;
  private final RiskView view;

  RiskPanel(Page page, RiskView view) {
    this.page = page;
    this.view = view;
  }

  /**
   * Draws it at one edge of the room there is, and gives the room it leaves: all of it where there
   * is no bent limb to speak of.
   */
  Rect draw(Rect room) {
    if (view.limb().isEmpty()) {
      return room;
    }
    boolean beside = page.image().getWidth() > WIDE * page.image().getHeight();
    if (beside) {
      double width = Math.min(page.u(WIDTH), MOST_WIDTH * page.image().getWidth());
      double gap = page.u(GAP);
      column(new Rect(room.right() - width, room.y(), width, room.height()));
      double line = room.right() - width - gap / 2;
      page.rule(new Line2D.Double(line, room.y(), line, room.bottom()), 1, Ink.FRAME);
      return new Rect(room.x(), room.y(), room.width() - width - gap, room.height());
    }
    double share = HEIGHT_SHARE * page.image().getHeight();
    double height = Math.max(page.u(HEIGHT), Math.min(page.u(MOST_HEIGHT), share));
    row(new Rect(room.x(), room.bottom() - height, room.width(), height));
    return new Rect(room.x(), room.y(), room.width(), room.height() - height - page.u(GAP) / 2);
  }

  private void column(Rect room) {
    double y = title(room);
    if (view.limb().isPresent()) {
      double spare = room.bottom() - y - page.u(KEY) - page.u(230);
      double height = Math.max(page.u(LEAST_PLOT), Math.min(page.u(MOST_PLOT), spare));
      plot(new Rect(room.x(), y, room.width(), height));
      y = new PlotKey(page).draw(room.x(), y + height + page.u(20)) + page.u(20);
    }
    new RiskList(page, view.risk()).draw(new Rect(room.x(), y, room.width(), room.bottom() - y));
  }

  private void row(Rect room) {
    double half = room.width() * 0.55;
    double y = title(room);
    double right = room.x() + half + page.u(GAP);
    double below = y + page.u(10);
    if (view.limb().isPresent()) {
      plot(new Rect(room.x(), y, half, room.bottom() - y));
      below = new PlotKey(page).draw(right, y + page.u(16)) + page.u(16);
    }
    new RiskList(page, view.risk())
        .draw(new Rect(right, below, room.right() - right, room.bottom() - below));
  }

  private double title(Rect room) {
    String words =
        view.limb()
            .map(limb -> "What the wood bears along limb " + limb.limb())
            .orElse("What the wood bears");
    return page.paragraph(
            words,
            new Point2D.Double(room.x(), room.y() + page.u(20)),
            Page.Style.CAPTION,
            new Paragraph.Room(room.width(), 2))
        - page.u(TITLE) / 2
        + page.u(12);
  }

  private void plot(Rect room) {
    view.limb()
        .filter(limb -> limb.strains().size() > 1)
        .ifPresent(limb -> new StrainPlot(page, limb, room).draw());
  }
}
