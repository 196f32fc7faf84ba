// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Draws outlines round picked segments, and words on plates. */
final class PickPen {
  private static final double GAP = 2.5;
  private static final float WIDTH = 3;
  private static final double PLATE_INSET = 6;

  private final Graphics2D pen;
  private final Camera camera;

  PickPen(Graphics2D pen, Camera camera) {
    this.pen = pen;
    this.camera = camera;
  }

  /** Outlines a segment, dashed where it is only hovered over. */
  void outline(StagesView.Outline segment, boolean hovered) {
    Shape shape = shape(segment, camera, GAP);
    pen.setColor(Theme.colour(Shade.PAPER));
    pen.setStroke(new BasicStroke(WIDTH + 3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(shape);
    pen.setColor(Theme.colour(Shade.SELECTION));
    float[] dash = hovered ? new float[] {8, 5} : null;
    pen.setStroke(
        new BasicStroke(
            hovered ? 2 : WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0));
    pen.draw(shape);
  }

  /** The outline of a segment as it is seen, with a gap round it [user pixels]. */
  static Shape shape(StagesView.Outline segment, Camera camera, double gap) {
    Area area = new Area();
    Camera.Pixel before = null;
    double radiusBefore = 0;
    for (int n = 0; n < segment.axis().size(); n++) {
      Point3 point = segment.axis().get(n);
      Camera.Pixel at = camera.project(point);
      double radius = segment.radii().get(n) * camera.scaleAt(point) + gap;
      area.add(
          new Area(new Ellipse2D.Double(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius)));
      if (before != null && before.distance(at) > 1e-3) {
        area.add(new Area(piece(before, radiusBefore, at, radius)));
      }
      before = at;
      radiusBefore = radius;
    }
    return area;
  }

  private static Path2D piece(Camera.Pixel a, double ra, Camera.Pixel b, double rb) {
    double length = a.distance(b);
    double nx = -(b.y() - a.y()) / length;
    double ny = (b.x() - a.x()) / length;
    Path2D path = new Path2D.Double();
    path.moveTo(a.x() + nx * ra, a.y() + ny * ra);
    path.lineTo(b.x() + nx * rb, b.y() + ny * rb);
    path.lineTo(b.x() - nx * rb, b.y() - ny * rb);
    path.lineTo(a.x() - nx * ra, a.y() - ny * ra);
    path.closePath();
    return path;
  }

  /** Writes words on a plate beside a place, inside a room, and gives where the plate is. */
  Rectangle2D plate(String words, Camera.Pixel beside, Rectangle2D room) {
    TextLayout line = new TextLayout(words, Theme.strong(), pen.getFontRenderContext());
    double width = line.getAdvance() + 2 * PLATE_INSET;
    double height = line.getAscent() + line.getDescent() + PLATE_INSET;
    double x = Math.max(room.getX(), Math.min(beside.x(), room.getMaxX() - width));
    double y = Math.max(room.getY(), Math.min(beside.y(), room.getMaxY() - height));
    RoundRectangle2D plate = new RoundRectangle2D.Double(x, y, width, height, 8, 8);
    Color raised = Theme.colour(Shade.RAISED);
    pen.setColor(new Color(raised.getRed(), raised.getGreen(), raised.getBlue(), 235));
    pen.fill(plate);
    pen.setColor(Theme.colour(Shade.SELECTION));
    pen.setStroke(new BasicStroke(1.5f));
    pen.draw(plate);
    pen.setColor(Theme.colour(Shade.INK));
    line.draw(pen, (float) (x + PLATE_INSET), (float) (y + PLATE_INSET / 2 + line.getAscent()));
    return plate.getBounds2D();
  }
}
