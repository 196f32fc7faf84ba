// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.StrainScale;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Locale;

/** The colours of strain with their numbers in per cent. */
final class Legend {
  /** Room it takes on the page of the default size, with some to its left [pixels]. */
  static final double ROOM = 420;

  private static final double WIDTH = 360;
  private static final double HEIGHT = 15;

  private Legend() {}

  /** Draws it with its right end at a point; y is the middle of the bar [pixels]. */
  static void draw(Page page, StrainScale scale, double right, double y) {
    double width = page.u(WIDTH);
    double left = right - width - page.u(15);
    double top = y - page.u(HEIGHT) / 2;
    int columns = (int) Math.round(width);
    for (int c = 0; c < columns; c++) {
      double strain = scale.limit() * (2 * (c + 0.5) / columns - 1);
      page.pen().setColor(new Color(scale.colour(strain).rgb()));
      page.pen()
          .fill(
              new java.awt.geom.Rectangle2D.Double(
                  left + c * width / columns, top, width / columns + 1, page.u(HEIGHT)));
    }
    double above = top - page.u(10);
    page.write("squeezed", left, above, Page.Style.KEY_MORE);
    page.write("stretched", left + width, above, Page.Style.KEY_MORE.at(Page.Align.RIGHT));
    String title = scale.isOpen() ? "strain, % or more" : "bending strain, %";
    page.write(title, left + width / 2, above, Page.Style.KEY.at(Page.Align.MIDDLE));
    List<String> numbers = numbers(scale);
    for (int n = 0; n < numbers.size(); n++) {
      double x = left + width * n / (numbers.size() - 1);
      double below = top + page.u(HEIGHT);
      page.rule(new Line2D.Double(x, below, x, below + page.u(5)), 1.2, Ink.HAIR);
      page.write(numbers.get(n), x, below + page.u(23), Page.Style.KEY_MORE.at(Page.Align.MIDDLE));
    }
  }

  /** The numbers under the ticks in per cent, as few decimals as tell them apart. */
  static List<String> numbers(StrainScale scale) {
    int decimals = 0;
    while (decimals < 4 && !isRound(scale.limit() * 50 * Math.pow(10, decimals))) {
      decimals++;
    }
    int places = decimals;
    return scale.ticks().stream().map(tick -> number(tick * 100, places)).toList();
  }

  private static boolean isRound(double value) {
    return Math.abs(value - Math.rint(value)) < 1e-9 * Math.max(1, Math.abs(value));
  }

  private static String number(double percent, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(percent));
    if (percent == 0) {
      return "0";
    }
    return (percent < 0 ? "−" : "+") + text;
  }
}
