// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Scene;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.LinearGradientPaint;
import java.awt.MultipleGradientPaint;
import java.awt.RadialGradientPaint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Draws the soil of a view: its line from the side, a round patch of it from above. */
final class Soil {
  private static final double DEPTH = 46;

  private Soil() {}

  static void paint(Page page, ViewFrame frame, Scene scene) {
    Point3 base = scene.base();
    Camera.Pixel at = frame.camera().project(new Point3(base.x(), base.y(), 0));
    double x = frame.area().x() + at.x();
    double y = frame.area().y() + at.y();
    double tilt = Math.sin(frame.camera().angle().elevation());
    if (Math.abs(tilt) < 1e-6) {
      line(page, frame.area(), y);
    } else {
      Point3 low = scene.bounds().low();
      Point3 high = scene.bounds().high();
      double reach = 0.62 * Math.hypot(high.x() - low.x(), high.y() - low.y());
      double radius = reach * frame.camera().pixelsPerMetre();
      patch(page, new Point2D.Double(x, y), radius, Math.abs(tilt));
    }
  }

  private static void line(Page page, Rect area, double y) {
    float[] stops = {0, 0.08f, 0.92f, 1};
    Color clear = Ink.faded(Ink.SOIL, 0);
    Color full = Ink.SOIL;
    page.pen()
        .setPaint(
            new GradientPaint(
                0, (float) y, Ink.faded(Ink.SOIL, 0.22), 0, (float) (y + page.u(DEPTH)), clear));
    page.pen().fill(new Rectangle2D.Double(area.x(), y, area.width(), page.u(DEPTH)));
    page.pen()
        .setPaint(
            new LinearGradientPaint(
                (float) area.x(),
                0,
                (float) area.right(),
                0,
                stops,
                new Color[] {clear, full, full, clear}));
    page.pen().fill(new Rectangle2D.Double(area.x(), y - page.u(0.75), area.width(), page.u(1.5)));
  }

  private static void patch(Page page, Point2D at, double radius, double tilt) {
    AffineTransform flat = new AffineTransform(1, 0, 0, tilt, at.getX(), at.getY());
    page.pen()
        .setPaint(
            new RadialGradientPaint(
                new Point2D.Double(0, 0),
                (float) radius,
                new Point2D.Double(0, 0),
                new float[] {0, 0.6f, 1},
                new Color[] {
                  Ink.faded(Ink.SOIL, 0.30), Ink.faded(Ink.SOIL, 0.16), Ink.faded(Ink.SOIL, 0)
                },
                MultipleGradientPaint.CycleMethod.NO_CYCLE,
                MultipleGradientPaint.ColorSpaceType.SRGB,
                flat));
    page.pen()
        .fill(
            flat.createTransformedShape(
                new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius)));
  }
}
