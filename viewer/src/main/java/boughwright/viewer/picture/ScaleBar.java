// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Wording;
import java.awt.geom.Line2D;

/**
 * A bar of a round length.
 *
 * @param length what it stands for [m]
 * @param pixels how long it is on the page [pixels]
 */
record ScaleBar(double length, double pixels) {
  private static final double[] STEPS = {5, 2, 1};

  /** The longest bar of 1, 2 or 5 times a power of ten that fits into a length on the page. */
  static ScaleBar fitting(double pixelsPerMetre, double mostPixels) {
    double most = mostPixels / pixelsPerMetre;
    double power = Math.pow(10, Math.floor(Math.log10(most)));
    for (double step : STEPS) {
      if (step * power <= most) {
        return new ScaleBar(step * power, step * power * pixelsPerMetre);
      }
    }
    return new ScaleBar(power, power * pixelsPerMetre);
  }

  /** Draws it with its left end at a point, and gives where it ends [pixels]. */
  double draw(Page page, double x, double y) {
    return draw(page, x, y, words());
  }

  /** The same with other words. */
  double draw(Page page, double x, double y, String words) {
    double end = page.u(7);
    page.rule(new Line2D.Double(x, y, x + pixels, y), 3, Ink.TEXT);
    page.rule(
        new Line2D.Double(x + page.u(0.75), y - end, x + page.u(0.75), y + end), 1.5, Ink.TEXT);
    page.rule(
        new Line2D.Double(x + pixels - page.u(0.75), y - end, x + pixels - page.u(0.75), y + end),
        1.5,
        Ink.TEXT);
    page.write(words, x + pixels / 2, y - page.u(14), Page.Style.KEY.at(Page.Align.MIDDLE));
    return x + pixels;
  }

  String words() {
    return length < 0.001 ? "0." + Math.round(length * 1e4) + " mm" : Wording.millimetres(length);
  }
}
