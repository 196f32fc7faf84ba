// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Mark;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/** Numbers in rings beside the faults of a view, each with a line to its place; none on another. */
final class FlawBadges {
  private static final double RADIUS = 14;
  private static final double DOT = 5;

  /** How far a number may stand from its place. */
  private static final double[] DISTANCES = {34, 50, 70, 96, 130, 170};

  private static final int WAYS = 16;

  private final Page page;
  private final ViewFrame frame;

  FlawBadges(Page page, ViewFrame frame) {
    this.page = page;
    this.frame = frame;
  }

  /** A place and where its number stands [pixels of the view]. */
  private record Badge(Mark.Flaw flaw, double[] place, double[] at) {}

  void paint(List<Mark.Flaw> flaws, Occupancy occupancy) {
    List<double[]> places = flaws.stream().map(this::inView).toList();
    List<Badge> badges = new ArrayList<>();
    for (int n = 0; n < flaws.size(); n++) {
      double[] at = best(places.get(n), places, badges, occupancy);
      badges.add(new Badge(flaws.get(n), places.get(n), at));
    }
    badges.forEach(this::leader);
    badges.forEach(this::number);
  }

  private double[] inView(Mark.Flaw flaw) {
    Camera.Pixel pixel = frame.camera().project(flaw.at());
    return new double[] {pixel.x(), pixel.y()};
  }

  /** Where least wood lies under it, near first; on no other number and on no place. */
  private double[] best(
      double[] place, List<double[]> places, List<Badge> badges, Occupancy occupancy) {
    double[] best = {place[0], place[1]};
    double least = Double.POSITIVE_INFINITY;
    for (double distance : DISTANCES) {
      for (int way = 0; way < WAYS; way++) {
        double angle = 2 * Math.PI * way / WAYS;
        double x = place[0] + page.u(distance) * Math.cos(angle);
        double y = place[1] - page.u(distance) * Math.sin(angle);
        Rect box = new Rect(x, y, 0, 0).grown(page.u(RADIUS));
        double cost = occupancy.share(box) + distance / 200;
        if (cost < least && isInside(box) && isFree(x, y, places, badges)) {
          least = cost;
          best = new double[] {x, y};
        }
      }
    }
    return best;
  }

  private boolean isInside(Rect box) {
    return box.x() >= 0
        && box.y() >= 0
        && box.right() <= frame.area().width()
        && box.bottom() <= frame.area().height();
  }

  private boolean isFree(double x, double y, List<double[]> places, List<Badge> badges) {
    double room = page.u(2 * RADIUS + 4);
    double clear = page.u(RADIUS + DOT + 3);
    return badges.stream().allMatch(b -> Math.hypot(b.at()[0] - x, b.at()[1] - y) > room)
        && places.stream().allMatch(p -> Math.hypot(p[0] - x, p[1] - y) > clear);
  }

  private void leader(Badge badge) {
    double x = frame.area().x();
    double y = frame.area().y();
    double[] from = badge.place();
    double[] to = badge.at();
    Line2D line = new Line2D.Double(x + from[0], y + from[1], x + to[0], y + to[1]);
    page.rule(line, 4.4, Ink.faded(Ink.PAPER, 0.8));
    page.rule(line, 1.8, Ink.TROUBLE);
    dot(x + from[0], y + from[1]);
  }

  private void dot(double x, double y) {
    double rim = page.u(DOT + 2);
    double r = page.u(DOT);
    page.ink(Ink.PAPER);
    page.pen().fill(new Ellipse2D.Double(x - rim, y - rim, 2 * rim, 2 * rim));
    page.ink(Ink.TROUBLE);
    page.pen().fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
  }

  private void number(Badge badge) {
    FlawBadges.ring(
        page,
        badge.flaw().number(),
        frame.area().x() + badge.at()[0],
        frame.area().y() + badge.at()[1]);
  }

  /** A number in a ring about a point of the page [pixels]. */
  static void ring(Page page, int number, double x, double y) {
    double r = page.u(RADIUS);
    Ellipse2D circle = new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    page.ink(Ink.PAPER);
    page.pen().fill(circle);
    Glyph.draw(page, circle, Ink.TROUBLE, false);
    Page.Style style = Page.Style.PANEL.in(Ink.TROUBLE).at(Page.Align.MIDDLE);
    page.write(String.valueOf(number), x, y + page.u(6.5), style);
  }
}
