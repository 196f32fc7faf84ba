// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Says what the lines and bands of a strain plot mean. */
final class PlotKey {
  private static final double SWATCH = 34;
  private static final double ROW = 24;
  private static final double COLUMN = 190;

  private final Page page;

  PlotKey(Page page) {
    this.page = page;
  }

  /** How a line or band looks: dash 0 is a full line; a band is drawn behind its line. */
  private record Look(Color colour, double width, double dash, boolean band) {}

  /** Draws it from a corner on, and gives where it ends [pixels]. */
  double draw(double x, double top) {
    double second = x + page.u(COLUMN);
    double y = top;
    entry(x, y, "stretched side", new Look(Ink.STRETCHED, 3, 0, false));
    entry(second, y, "cracks here, nine in ten", new Look(Ink.STRETCHED, 1.6, 7, true));
    y += page.u(ROW);
    entry(x, y, "squeezed side", new Look(Ink.SQUEEZED, 3, 0, false));
    entry(second, y, "kinks here, nine in ten", new Look(Ink.SQUEEZED, 1.6, 7, true));
    y += page.u(ROW);
    entry(x, y, "yields slightly: normal working range", new Look(Ink.QUIET, 1.6, 2.5, false));
    return y + page.u(ROW);
  }

  private void entry(double x, double y, String words, Look look) {
    double width = page.u(SWATCH);
    if (look.band()) {
      page.pen().setColor(Ink.faded(look.colour(), 0.16));
      page.pen().fill(new Rectangle2D.Double(x, y - page.u(8), width, page.u(16)));
    }
    float[] pattern = {(float) page.u(look.dash()), (float) page.u(look.dash())};
    page.pen()
        .setStroke(
            look.dash() > 0
                ? new BasicStroke((float) page.u(look.width()), 0, 1, 10, pattern, 0)
                : new BasicStroke((float) page.u(look.width())));
    page.pen().setColor(look.colour());
    page.pen().draw(new Line2D.Double(x, y, x + width, y));
    page.write(words, x + width + page.u(12), y + page.u(6), Page.Style.KEY_MORE);
  }
}
