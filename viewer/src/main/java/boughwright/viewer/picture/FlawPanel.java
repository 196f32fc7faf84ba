// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Mark;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;

/** The list of the numbered faults, beside or under the views. */
final class FlawPanel {
  private static final double WIDTH = 500;
  private static final double GAP = 40;
  private static final double INDENT = 44;
  private static final double AFTER = 16;

  /** Of the width of a page, at most this [1]. */
  private static final double MOST_WIDTH = 0.35;

  /** Of the height of a page, where it stands under the views [1]. */
  private static final double HEIGHT_SHARE = 0.3;

  /** Wider pages than this have it beside the views: width over height [1]. */
  private static final double WIDE = 1.15;

  private final Page page;
  private final List<Mark.Flaw> flaws;

  FlawPanel(Page page, List<Mark.Flaw> flaws) {
    this.page = page;
    this.flaws = List.copyOf(flaws);
  }

  /** Draws it at one edge of the room there is, and gives the room it leaves. */
  Rect draw(Rect room) {
    if (flaws.isEmpty()) {
      return room;
    }
    double gap = page.u(GAP);
    if (page.image().getWidth() > WIDE * page.image().getHeight()) {
      double width = Math.min(page.u(WIDTH), MOST_WIDTH * page.image().getWidth());
      list(new Rect(room.right() - width, room.y(), width, room.height()));
      double line = room.right() - width - gap / 2;
      page.rule(new Line2D.Double(line, room.y(), line, room.bottom()), 1, Ink.FRAME);
      return new Rect(room.x(), room.y(), room.width() - width - gap, room.height());
    }
    double height = HEIGHT_SHARE * page.image().getHeight();
    list(new Rect(room.x(), room.bottom() - height, room.width(), height));
    return new Rect(room.x(), room.y(), room.width(), room.height() - height - gap / 2);
  }

  private void list(Rect room) {
    double y = room.y() + page.u(20);
    for (int n = 0; n < flaws.size(); n++) {
      boolean last = n + 1 == flaws.size();
      double needed = height(flaws.get(n), room) + (last ? 0 : page.u(30));
      if (y + needed > room.bottom()) {
        more(flaws.size() - n, room, y);
        return;
      }
      y = entry(flaws.get(n), room, y);
    }
  }

  private void more(int count, Rect room, double y) {
    page.write(
        count + " more: see the printed answer", room.x() + page.u(INDENT), y, Page.Style.KEY_MORE);
  }

  private double height(Mark.Flaw flaw, Rect room) {
    double sum = 0;
    for (int n = 0; n < flaw.words().size(); n++) {
      Page.Style style = style(n);
      double size = page.u(style.size());
      sum +=
          Paragraph.lines(flaw.words().get(n), style.weight(), size, two(room)).size()
              * size
              * Page.LEADING;
    }
    return sum;
  }

  private double entry(Mark.Flaw flaw, Rect room, double y) {
    FlawBadges.ring(page, flaw.number(), room.x() + page.u(17), y - page.u(6));
    double at = y;
    for (int n = 0; n < flaw.words().size(); n++) {
      Point2D from = new Point2D.Double(room.x() + page.u(INDENT), at);
      at = page.paragraph(flaw.words().get(n), from, style(n), two(room));
    }
    return at + page.u(AFTER);
  }

  private static Page.Style style(int line) {
    return line == 0 ? Page.Style.PANEL : Page.Style.KEY_MORE;
  }

  private Paragraph.Room two(Rect room) {
    return new Paragraph.Room(room.width() - page.u(INDENT), 2);
  }
}
