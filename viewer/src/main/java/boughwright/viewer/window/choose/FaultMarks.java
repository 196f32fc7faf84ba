// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.review.Fault;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Numbers on the tree where something is amiss. */
final class FaultMarks {
  private static final int SIZE = 26;
  private static final int STEPS = 24;

  private final Canvas canvas;
  private final Supplier<List<Fault>> faults;

  FaultMarks(Canvas canvas, Supplier<List<Fault>> faults) {
    this.canvas = canvas;
    this.faults = faults;
  }

  void paint(Graphics2D pen) {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    List<Camera.Pixel> taken = new ArrayList<>();
    List<Fault> all = faults.get();
    for (int n = 0; n < all.size(); n++) {
      Camera.Pixel foot = canvas.project(all.get(n).where().at());
      Camera.Pixel at = free(foot, taken);
      taken.add(at);
      draw(pen, foot, at, String.valueOf(n + 1));
    }
  }

  /** A place beside the mark's own that no other number covers. */
  private static Camera.Pixel free(Camera.Pixel foot, List<Camera.Pixel> taken) {
    double size = Theme.px(SIZE);
    for (int step = 0; step < STEPS; step++) {
      double reach = size * (1.1 + 0.9 * (step / 8));
      double angle = -Math.PI / 4 + step * Math.PI / 4;
      Camera.Pixel at =
          new Camera.Pixel(
              foot.x() + reach * Math.cos(angle), foot.y() + reach * Math.sin(angle));
      if (taken.stream().allMatch(other -> other.distance(at) > size)) {
        return at;
      }
    }
    return foot;
  }

  private static void draw(Graphics2D pen, Camera.Pixel foot, Camera.Pixel at, String number) {
    double half = Theme.px(SIZE) / 2.0;
    pen.setStroke(new BasicStroke(1.5f));
    pen.setColor(Theme.colour(Shade.INK));
    pen.draw(new Line2D.Double(foot.x(), foot.y(), at.x(), at.y()));
    Ellipse2D disc = new Ellipse2D.Double(at.x() - half, at.y() - half, 2 * half, 2 * half);
    pen.setColor(Theme.colour(Shade.RAISED));
    pen.fill(disc);
    pen.setColor(Theme.colour(Shade.INK));
    pen.draw(disc);
    pen.setFont(Theme.small());
    FontMetrics metrics = pen.getFontMetrics();
    pen.drawString(
        number,
        (float) (at.x() - metrics.stringWidth(number) / 2.0),
        (float) (at.y() + (metrics.getAscent() - metrics.getDescent()) / 2.0));
  }
}
