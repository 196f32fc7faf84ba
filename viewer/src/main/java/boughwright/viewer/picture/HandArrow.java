// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Mark;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/**
 * A pull by hand as seen in a view: an arrow from where the hand takes hold, as long as the place
 * is moved; a ring with a dot where it comes toward the viewer, with a cross where it goes away.
 *
 * @param x where the hand takes hold, from the left of the view [pixels]
 * @param y from its top [pixels]
 * @param toX where the arrow ends [pixels]
 * @param toY where the arrow ends [pixels]
 * @param endOn whether the pull is seen along its way
 * @param nearer whether it comes toward the viewer
 */
record HandArrow(double x, double y, double toX, double toY, boolean endOn, boolean nearer) {
  /** Pulls seen shorter than this part of their length are seen end on [1]. */
  private static final double END_ON = 0.3;

  private static final double SHORTEST = 46;
  private static final double HEAD = 13;
  private static final double GRIP = 6;

  static HandArrow of(Page page, ViewFrame frame, Mark.Hand hand) {
    Camera camera = frame.camera();
    Camera.Pixel at = camera.project(hand.at());
    Camera.Pixel to = camera.project(hand.to());
    double whole = hand.at().distance(hand.to()) * camera.pixelsPerMetre();
    double seen = at.distance(to);
    boolean endOn = seen < END_ON * whole;
    boolean nearer = hand.to().minus(hand.at()).dot(camera.angle().toViewer().vector()) > 0;
    double stretch = endOn ? 0 : Math.max(1, page.u(SHORTEST) / seen);
    return new HandArrow(
        at.x(),
        at.y(),
        at.x() + stretch * (to.x() - at.x()),
        at.y() + stretch * (to.y() - at.y()),
        endOn,
        nearer);
  }

  void keepFree(LabelPlacer placer) {
    placer.avoid(new Line2D.Double(x, y, toX, toY));
    placer.keepFree(new Rect(toX, toY, 0, 0).grown(4));
  }

  void draw(Page page, Rect area) {
    double fromX = area.x() + x;
    double fromY = area.y() + y;
    if (endOn) {
      drawEndOn(page, fromX, fromY);
      return;
    }
    double dx = toX - x;
    double dy = toY - y;
    double length = Math.hypot(dx, dy);
    double head = page.u(HEAD);
    double tipX = area.x() + toX;
    double tipY = area.y() + toY;
    Line2D shaft =
        new Line2D.Double(
            fromX, fromY, tipX - dx / length * head * 0.8, tipY - dy / length * head * 0.8);
    Path2D point = new Path2D.Double();
    point.moveTo(tipX, tipY);
    point.lineTo(tipX - head * (dx + 0.45 * dy) / length, tipY - head * (dy - 0.45 * dx) / length);
    point.lineTo(tipX - head * (dx - 0.45 * dy) / length, tipY - head * (dy + 0.45 * dx) / length);
    point.closePath();
    page.rule(shaft, 7, Ink.PAPER);
    outlined(page, point);
    page.rule(shaft, 3.2, Ink.TEXT);
    fill(page, point, Ink.TEXT);
    double r = page.u(GRIP);
    Shape grip = new Ellipse2D.Double(fromX - r, fromY - r, 2 * r, 2 * r);
    outlined(page, grip);
    fill(page, grip, Ink.TEXT);
  }

  private void drawEndOn(Page page, double atX, double atY) {
    double r = page.u(GRIP + 4);
    Shape ring = new Ellipse2D.Double(atX - r, atY - r, 2 * r, 2 * r);
    fill(page, ring, Ink.PAPER);
    page.ink(Ink.TEXT);
    page.pen().setStroke(new BasicStroke((float) page.u(2.6)));
    page.pen().draw(ring);
    if (nearer) {
      double dot = page.u(3.4);
      fill(page, new Ellipse2D.Double(atX - dot, atY - dot, 2 * dot, 2 * dot), Ink.TEXT);
    } else {
      double arm = 0.62 * r;
      page.rule(new Line2D.Double(atX - arm, atY - arm, atX + arm, atY + arm), 2.4, Ink.TEXT);
      page.rule(new Line2D.Double(atX - arm, atY + arm, atX + arm, atY - arm), 2.4, Ink.TEXT);
    }
  }

  private static void outlined(Page page, Shape shape) {
    page.ink(Ink.PAPER);
    page.pen().setStroke(new BasicStroke((float) page.u(4)));
    page.pen().draw(shape);
  }

  private static void fill(Page page, Shape shape, Color colour) {
    page.ink(colour);
    page.pen().fill(shape);
  }
}
