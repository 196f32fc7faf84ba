// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.sketch.draw.PointWords;
import boughwright.viewer.window.sketch.entry.Shown;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import javax.swing.JPanel;

/**
 * A small picture of where a piece points: from above with the viewer at the lower edge, and from
 * the side with level as a line.
 */
final class Rose extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int HEIGHT = 132;
  private static final double DOT = 4;

  private double azimuth;
  private double elevation;

  Rose() {
    setName("measure.add.rose");
    setOpaque(false);
    show(0, 0);
  }

  /** Shows a direction by its azimuth and elevation [rad]. */
  void show(double newAzimuth, double newElevation) {
    azimuth = newAzimuth;
    elevation = newElevation;
    String words =
        "Points "
            + PointWords.side(azimuth)
            + ", "
            + PointWords.elevation(elevation)
            + ". Azimuth 0 is toward you, 90 your left, counted clockwise seen from above.";
    setToolTipText(words);
    getAccessibleContext().setAccessibleName(words);
    repaint();
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(Theme.px(300), Theme.px(HEIGHT));
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(Theme.px(200), Theme.px(HEIGHT));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D pen = (Graphics2D) graphics.create();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setFont(Theme.small());
    double quarter = getWidth() / 4.0;
    above(pen, quarter + Theme.px(6));
    aside(pen, 3 * quarter - Theme.px(6));
    pen.dispose();
  }

  private double radius() {
    return getHeight() / 2.0 - Theme.px(24);
  }

  /** From above: the viewer is at the lower edge, so azimuth 0 points down and 90 to the left. */
  private void above(Graphics2D pen, double x) {
    double y = getHeight() / 2.0;
    double radius = radius();
    pen.setColor(Theme.colour(Shade.RULE));
    pen.setStroke(new BasicStroke(1.5f));
    pen.draw(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    pen.setColor(Theme.colour(Shade.QUIET));
    FontMetrics metrics = pen.getFontMetrics();
    centred(pen, "0\u00B0 you", x, y + radius + metrics.getAscent() + 2);
    centred(pen, "180\u00B0 behind", x, y - radius - metrics.getDescent() - 1);
    double away = radius + metrics.stringWidth("right") / 2.0 + 6;
    centred(pen, "90\u00B0", x - away, y - 2);
    centred(pen, "left", x - away, y + metrics.getAscent());
    centred(pen, "270\u00B0", x + away, y - 2);
    centred(pen, "right", x + away, y + metrics.getAscent());
    double level = Math.max(0.12, Math.cos(elevation)) * radius;
    arrow(pen, x, y, x - Math.sin(azimuth) * level, y + Math.cos(azimuth) * level);
  }

  /** From the side: level is a line, up is up. */
  private void aside(Graphics2D pen, double x) {
    double radius = radius();
    double left = x - radius * 0.7;
    double y = getHeight() / 2.0;
    pen.setColor(Theme.colour(Shade.RULE));
    pen.setStroke(new BasicStroke(1.5f));
    pen.draw(new Line2D.Double(left, y, left + 1.6 * radius, y));
    pen.setColor(Theme.colour(Shade.QUIET));
    FontMetrics metrics = pen.getFontMetrics();
    centred(pen, "90\u00B0 up", left, y - radius - metrics.getDescent() - 1);
    centred(pen, "-90\u00B0 down", left, y + radius + metrics.getAscent() + 2);
    pen.drawString("level", (float) (left + 0.95 * radius), (float) y - 4);
    arrow(pen, left, y, left + Math.cos(elevation) * radius, y - Math.sin(elevation) * radius);
    pen.setColor(Theme.colour(Shade.INK));
    pen.drawString(
        Shown.degrees(elevation) + "\u00B0",
        (float) (left + 1.2 * radius),
        (float) (y + metrics.getAscent() + 6));
  }

  private static void centred(Graphics2D pen, String words, double x, double y) {
    pen.drawString(words, (float) (x - pen.getFontMetrics().stringWidth(words) / 2.0), (float) y);
  }

  private static void arrow(Graphics2D pen, double fromX, double fromY, double x, double y) {
    pen.setColor(Theme.colour(Shade.ACCENT));
    pen.setStroke(new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(new Line2D.Double(fromX, fromY, x, y));
    pen.fill(new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT));
  }
}
