// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Draws the soil as a round patch, which seen level is a line, and the plumb line. */
final class SoilPen {
  private static final int CORNERS = 72;
  private static final int FILL = 70;

  private SoilPen() {}

  /**
   * Draws the soil.
   *
   * @param base the middle of the root base [m, scene frame]
   * @param reach how far it goes round it [m]
   */
  static void soil(Graphics2D pen, Camera camera, Point3 base, double reach) {
    Path2D patch = new Path2D.Double();
    for (int n = 0; n < CORNERS; n++) {
      double angle = 2 * Math.PI * n / CORNERS;
      Camera.Pixel at =
          camera.project(
              new Point3(
                  base.x() + reach * Math.cos(angle), base.y() + reach * Math.sin(angle), 0));
      if (n == 0) {
        patch.moveTo(at.x(), at.y());
      } else {
        patch.lineTo(at.x(), at.y());
      }
    }
    patch.closePath();
    Color soil = Theme.colour(Shade.SOIL);
    pen.setColor(new Color(soil.getRed(), soil.getGreen(), soil.getBlue(), FILL));
    pen.fill(patch);
    pen.setColor(soil);
    pen.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(patch);
  }

  /** Draws the plumb line through the root base, as high as a point. */
  static void plumb(Graphics2D pen, Camera camera, Point3 base, double top) {
    Camera.Pixel foot = camera.project(new Point3(base.x(), base.y(), 0));
    Camera.Pixel head = camera.project(new Point3(base.x(), base.y(), top));
    pen.setColor(Theme.colour(Shade.QUIET));
    pen.setStroke(
        new BasicStroke(
            1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {9, 5}, 0));
    pen.draw(new Line2D.Double(foot.x(), foot.y(), head.x(), head.y()));
  }
}
