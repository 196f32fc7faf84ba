// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.units.LengthUnit;
import java.awt.geom.Line2D;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A bar of a round length.
 *
 * @param length what it stands for [m]
 * @param pixels how long it is on the page [pixels]
 * @param unit what it is told in
 */
record ScaleBar(double length, double pixels, LengthUnit unit) {
  private static final double[] STEPS = {5, 2, 1};

  /** The longest bar in millimetres that fits into a length on the page. */
  static ScaleBar fitting(double pixelsPerMetre, double mostPixels) {
    return fitting(pixelsPerMetre, mostPixels, LengthUnit.MILLIMETRE);
  }

  /** The longest bar of 1, 2 or 5 times a power of ten that fits into a length on the page. */
  static ScaleBar fitting(double pixelsPerMetre, double mostPixels, LengthUnit unit) {
    double pixelsPerUnit = pixelsPerMetre * unit.toMetres(1);
    double most = mostPixels / pixelsPerUnit;
    double power = Math.pow(10, Math.floor(Math.log10(most)));
    for (double step : STEPS) {
      if (step * power <= most) {
        return of(step * power, pixelsPerUnit, unit);
      }
    }
    return of(power, pixelsPerUnit, unit);
  }

  private static ScaleBar of(double units, double pixelsPerUnit, LengthUnit unit) {
    return new ScaleBar(unit.toMetres(units), units * pixelsPerUnit, unit);
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
    BigDecimal round = new BigDecimal(unit.fromMetres(length)).round(new MathContext(1));
    return round.stripTrailingZeros().toPlainString() + " " + unit.symbol();
  }
}
