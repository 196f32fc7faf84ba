// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.StrainScale;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Locale;

/** The colours of strain with their numbers in per cent. */
final class Legend {
  /** Room it takes on the page of the default size, with some to its left [pixels]. */
  static final double ROOM = 420;

  /** How far its numbers reach below the middle of the bar, with some room [pixels]. */
  static final double BELOW = 38;

  private static final double WIDTH = 360;

  /** Between words that stand in one row, at least [pixels]. */
  private static final double GAP = 14;

  /** How much higher the title stands where it has a row of its own [pixels]. */
  private static final double TITLE_ROW = 22;

  private static final String LOW = "squeezed";
  private static final String HIGH = "stretched";
  private static final double HEIGHT = 15;

  private Legend() {}

  /** How wide the bar is where there is so much room for it and its numbers [pixels]. */
  static double width(Page page, double room) {
    return Math.min(page.u(WIDTH), room - page.u(30));
  }

  /** How much higher it is than usual on a bar of some width, for its title [pixels]. */
  static double more(Page page, StrainScale scale, double width) {
    double words =
        page.width(LOW, Page.Style.KEY_MORE)
            + page.width(HIGH, Page.Style.KEY_MORE)
            + page.width(title(scale), Page.Style.KEY)
            + 2 * page.u(GAP);
    // The title stands in the middle, so that the longer of the two words decides.
    double side =
        Math.max(page.width(LOW, Page.Style.KEY_MORE), page.width(HIGH, Page.Style.KEY_MORE));
    double middle = 2 * (side + page.u(GAP)) + page.width(title(scale), Page.Style.KEY);
    return Math.max(words, middle) > width ? page.u(TITLE_ROW) : 0;
  }

  private static String title(StrainScale scale) {
    return scale.isOpen() ? "strain, % or more" : "bending strain, %";
  }

  /** Draws it with its right end at a point; y is the middle of the bar [pixels]. */
  static void draw(Page page, StrainScale scale, double right, double y) {
    draw(page, scale, new Point2D.Double(right, y), page.u(WIDTH));
  }

  /** The same on a bar of some width [pixels]. */
  static void draw(Page page, StrainScale scale, Point2D end, double width) {
    double y = end.getY();
    double left = end.getX() - width - page.u(15);
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
    page.write(LOW, left, above, Page.Style.KEY_MORE);
    page.write(HIGH, left + width, above, Page.Style.KEY_MORE.at(Page.Align.RIGHT));
    double titleAt = above - more(page, scale, width);
    page.write(title(scale), left + width / 2, titleAt, Page.Style.KEY.at(Page.Align.MIDDLE));
    List<String> numbers = numbers(scale);
    for (int n = 0; n < numbers.size(); n += step(page, numbers, width)) {
      double x = left + width * n / (numbers.size() - 1);
      double below = top + page.u(HEIGHT);
      page.rule(new Line2D.Double(x, below, x, below + page.u(5)), 1.2, Ink.HAIR);
      page.write(numbers.get(n), x, below + page.u(23), Page.Style.KEY_MORE.at(Page.Align.MIDDLE));
    }
  }

  /** Every number, or every second where they would touch. */
  private static int step(Page page, List<String> numbers, double width) {
    double widest =
        numbers.stream().mapToDouble(n -> page.width(n, Page.Style.KEY_MORE)).max().orElse(0);
    return widest + page.u(GAP) > width / (numbers.size() - 1) ? 2 : 1;
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
