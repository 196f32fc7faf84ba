// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Draws the proposed apex, and how it stands over the root base. */
final class ApexPen {
  private final Page page;

  ApexPen(Page page) {
    this.page = page;
  }

  /**
   * Draws it.
   *
   * @param tip the tip on the page: x, then y [pixels]
   * @param foot the soil straight below it [pixels]
   * @param base the middle of the root base [pixels]
   */
  void draw(double[] tip, double[] foot, double[] base) {
    page.dashes(
        new Line2D.Double(tip[0], tip[1], foot[0], foot[1]), 3.4, Ink.faded(Ink.PAPER, 0.55));
    page.dashes(new Line2D.Double(tip[0], tip[1], foot[0], foot[1]), 1.5, Ink.APEX);
    double s = page.u(8);
    triangle(tip[0], tip[1] - page.u(5), s);
    double soil = foot[1];
    page.rule(
        new Line2D.Double(base[0], soil - page.u(11), base[0], soil + page.u(11)), 5, Ink.PAPER);
    page.rule(new Line2D.Double(base[0], soil - page.u(9), base[0], soil + page.u(9)), 2, Ink.APEX);
    page.rule(new Line2D.Double(base[0], soil, foot[0], soil), 2, Ink.APEX);
    triangle(foot[0], foot[1], s);
  }

  /** A filled triangle that stands on its point. */
  private void triangle(double x, double y, double half) {
    double top = y - 1.25 * half;
    Path2D shape = new Path2D.Double();
    shape.moveTo(x, y);
    shape.lineTo(x - half, top);
    shape.lineTo(x + half, top);
    shape.closePath();
    page.ink(Ink.PAPER);
    page.pen().setStroke(new BasicStroke((float) page.u(3)));
    page.pen().draw(shape);
    page.ink(Ink.APEX);
    page.pen().fill(shape);
  }
}
