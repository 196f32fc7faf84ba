// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** Paints what tools show: each mark has a dark and a light edge, so it is seen on anything. */
final class Handles {
  private static final double LARGE = 12;
  private static final double SMALL = 4;
  private static final float EDGE = 5;
  private static final float LINE = 2.5f;
  private static final int ROOM = 8;
  private static final int AWAY = 22;

  private final Graphics2D pen;

  Handles(Graphics2D pen) {
    this.pen = pen;
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  /** A node that can be grasped. */
  void small(Pixel at) {
    pen.setColor(Theme.colour(Shade.PAPER));
    pen.fill(disc(at, SMALL + 2));
    pen.setColor(Theme.colour(Shade.INK));
    pen.fill(disc(at, SMALL));
  }

  /** The node that is grasped, or would be. */
  void large(Pixel at) {
    edged(disc(at, LARGE));
    pen.setColor(Theme.colour(Shade.ACCENT));
    pen.fill(disc(at, SMALL));
  }

  private static Ellipse2D disc(Pixel at, double radius) {
    return new Ellipse2D.Double(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius);
  }

  /** A shape drawn so that it is seen on any ground. */
  void edged(java.awt.Shape shape) {
    pen.setStroke(new BasicStroke(EDGE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.setColor(Theme.colour(Shade.PAPER));
    pen.draw(shape);
    pen.setStroke(new BasicStroke(LINE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.setColor(Theme.colour(Shade.ACCENT));
    pen.draw(shape);
  }

  void line(Pixel from, Pixel to) {
    edged(new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
  }

  /** A piece of wood as it would be, by its widths at both ends [user pixels]. */
  void wood(Pixel from, Pixel to, double fromWidth, double toWidth) {
    double length = from.distance(to);
    if (length == 0) {
      return;
    }
    double acrossX = (to.y() - from.y()) / length / 2;
    double acrossY = (from.x() - to.x()) / length / 2;
    Path2D shape = new Path2D.Double();
    shape.moveTo(from.x() + acrossX * fromWidth, from.y() + acrossY * fromWidth);
    shape.lineTo(to.x() + acrossX * toWidth, to.y() + acrossY * toWidth);
    shape.lineTo(to.x() - acrossX * toWidth, to.y() - acrossY * toWidth);
    shape.lineTo(from.x() - acrossX * fromWidth, from.y() - acrossY * fromWidth);
    shape.closePath();
    Color accent = Theme.colour(Shade.ACCENT);
    pen.setColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 90));
    pen.fill(shape);
    edged(shape);
  }

  /** Lines of words beside a place, kept inside the picture. */
  void words(Pixel at, List<String> lines) {
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setFont(Theme.strong());
    FontMetrics metrics = pen.getFontMetrics();
    int width = 2 * ROOM + lines.stream().mapToInt(metrics::stringWidth).max().orElse(0);
    int height = 2 * ROOM + lines.size() * metrics.getHeight();
    Rectangle room = pen.getClipBounds();
    double x = at.x() + AWAY;
    double y = at.y() - AWAY - height;
    if (room != null) {
      x = x + width > room.x + room.width ? at.x() - AWAY - width : x;
      y = y < room.y ? at.y() + AWAY : y;
      x = Math.max(room.x, Math.min(x, room.x + room.width - (double) width));
      y = Math.max(room.y, Math.min(y, room.y + room.height - (double) height));
    }
    RoundRectangle2D box = new RoundRectangle2D.Double(x, y, width, height, ROOM, ROOM);
    pen.setColor(Theme.colour(Shade.RAISED));
    pen.fill(box);
    pen.setStroke(new BasicStroke(1));
    pen.setColor(Theme.colour(Shade.RULE));
    pen.draw(box);
    pen.setColor(Theme.colour(Shade.INK));
    float line = (float) y + ROOM + metrics.getAscent();
    for (String words : lines) {
      pen.drawString(words, (float) x + ROOM, line);
      line += metrics.getHeight();
    }
  }
}
