// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.trial.FailureMode;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** The sign of a way to fail: its shape tells it apart without its colour. */
final class Glyph {
  private static final double CORNER = 1.25;

  private Glyph() {}

  static Color colour(FailureMode mode) {
    return switch (mode) {
      case CRACK -> Ink.STRETCHED;
      case KINK -> Ink.SQUEEZED;
      case SPLIT, SHEAR, TEAR -> Ink.TEXT;
    };
  }

  /** The outline about a point; r is about half its width [pixels]. */
  static Shape shape(FailureMode mode, double x, double y, double r) {
    return switch (mode) {
      case CRACK -> new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
      case KINK -> polygon(x, y, CORNER * r, 4, 0);
      case SPLIT -> polygon(x, y, CORNER * r, 4, Math.PI / 4);
      case SHEAR -> polygon(x, y, CORNER * r, 3, Math.PI / 2);
      case TEAR -> polygon(x, y, CORNER * r, 3, -Math.PI / 2);
    };
  }

  private static Shape polygon(double x, double y, double r, int corners, double turn) {
    Path2D path = new Path2D.Double();
    for (int n = 0; n < corners; n++) {
      double angle = turn + 2 * Math.PI * n / corners;
      double px = x + r * Math.cos(angle);
      double py = y - r * Math.sin(angle);
      if (n == 0) {
        path.moveTo(px, py);
      } else {
        path.lineTo(px, py);
      }
    }
    path.closePath();
    return path;
  }

  /** Draws it on a rim of paper, dashed where what it marks is hidden. */
  static void draw(Page page, Shape shape, Color colour, boolean hidden) {
    page.ink(Ink.PAPER);
    page.pen().setStroke(new BasicStroke((float) page.u(6)));
    page.pen().draw(shape);
    page.ink(colour);
    float[] dash = {(float) page.u(4), (float) page.u(4)};
    page.pen()
        .setStroke(
            hidden
                ? new BasicStroke(
                    (float) page.u(2.4), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0)
                : new BasicStroke((float) page.u(2.4)));
    page.pen().draw(shape);
  }
}
