// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Body;
import boughwright.viewer.scene.Palette;
import boughwright.viewer.scene.Scene;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;

/** Says what solid, translucent and hatched wood mean. */
final class Key {
  private static final double SWATCH_WIDTH = 34;
  private static final double SWATCH_HEIGHT = 16;

  /** How a kind of wood looks: its colour, how much of the paper it covers, whether hatched. */
  private record Look(Color colour, double fill, boolean hatched) {}

  private static final Look SOLID = new Look(Ink.of(Palette.BARK), 1, false);
  private static final Look GHOST = new Look(Ink.of(Palette.GHOST), 0.35, false);
  private static final Look REMOVED = new Look(Ink.of(Palette.REMOVED), 0.12, true);

  private final Page page;

  Key(Page page) {
    this.page = page;
  }

  /** Draws the key of a scene from a point on; y is the middle of the swatches [pixels]. */
  void draw(Scene scene, double x, double y) {
    double next = x;
    boolean bent = scene.scale().isPresent();
    next = entry(next, y, bent ? "bent" : "as measured", SOLID);
    if (scene.has(Body.Role.GHOST)) {
      next = entry(next, y, "as measured", GHOST);
    }
    if (scene.has(Body.Role.REMOVED)) {
      entry(next, y, "cut away", REMOVED);
    }
  }

  private double entry(double x, double y, String words, Look look) {
    double width = page.u(SWATCH_WIDTH);
    double height = page.u(SWATCH_HEIGHT);
    Shape swatch = new RoundRectangle2D.Double(x, y - height / 2, width, height, height, height);
    page.pen().setColor(Ink.faded(look.colour(), look.fill()));
    page.pen().fill(swatch);
    if (look.hatched()) {
      hatch(swatch, look.colour(), x, y);
    }
    if (look.fill() < 1) {
      page.pen().setColor(Ink.faded(look.colour(), 0.8));
      page.pen().setStroke(new BasicStroke((float) page.u(1.2)));
      page.pen().draw(swatch);
    }
    double text = x + width + page.u(10);
    page.write(words, text, y + page.u(6), Page.Style.KEY);
    return text + page.width(words, Page.Style.KEY) + page.u(30);
  }

  private void hatch(Shape swatch, Color colour, double x, double y) {
    Shape before = page.pen().getClip();
    page.pen().clip(swatch);
    page.pen().setColor(Ink.faded(colour, 0.6));
    page.pen().setStroke(new BasicStroke((float) page.u(1.2)));
    double half = page.u(SWATCH_HEIGHT) / 2;
    for (double at = -half; at < page.u(SWATCH_WIDTH) + half; at += page.u(6)) {
      page.pen().draw(new Line2D.Double(x + at - half, y - half, x + at + half, y + half));
    }
    page.pen().setClip(before);
  }
}
