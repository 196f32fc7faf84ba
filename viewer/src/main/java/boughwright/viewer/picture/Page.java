// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.function.UnaryOperator;

/** The sheet that is drawn on: an image with its pens and letters. */
final class Page implements AutoCloseable {
  /** From baseline to baseline, over the size of the letters [1]. */
  static final double LEADING = 1.35;

  private final BufferedImage image;
  private final Graphics2D pen;
  private final double unit;
  private final UnaryOperator<Color> tones;

  /** A sheet of paper. */
  Page(PictureSize size) {
    this(size, size.unit());
  }

  /** A sheet of paper with larger or smaller words than its size has by itself. */
  Page(PictureSize size, double unit) {
    this(
        new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB),
        unit,
        UnaryOperator.identity());
    ink(Ink.PAPER);
    pen.fillRect(0, 0, size.width(), size.height());
  }

  /**
   * A sheet over an image as it is.
   *
   * @param unit what a pixel of the page of the default size is here [pixels]
   * @param tones what each ink becomes on what lies under the sheet
   */
  Page(BufferedImage image, double unit, UnaryOperator<Color> tones) {
    this.image = image;
    this.unit = unit;
    this.tones = tones;
    pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  /** Takes up a colour. */
  void ink(Color colour) {
    pen.setColor(tones.apply(colour));
  }

  /** A length of the page of the default size, on this page [pixels]. */
  double u(double length) {
    return length * unit;
  }

  Graphics2D pen() {
    return pen;
  }

  BufferedImage image() {
    return image;
  }

  /** Where words stand on their point. */
  enum Align {
    LEFT(0),
    MIDDLE(0.5),
    RIGHT(1);

    private final double share;

    Align(double share) {
      this.share = share;
    }
  }

  /**
   * Style of words.
   *
   * @param weight weight
   * @param size size on the page of the default size [pixels]
   * @param colour colour
   * @param align where the words stand on their point
   */
  record Style(Lettering.Weight weight, double size, Color colour, Align align) {
    static final Style NAME = new Style(Lettering.Weight.STRONG, 42, Ink.TEXT, Align.LEFT);
    static final Style ABOUT = new Style(Lettering.Weight.REGULAR, 21, Ink.QUIET, Align.LEFT);
    static final Style TROUBLE = new Style(Lettering.Weight.STRONG, 21, Ink.TROUBLE, Align.LEFT);
    static final Style VERDICT = new Style(Lettering.Weight.STRONG, 24, Ink.TEXT, Align.LEFT);
    static final Style WHY = new Style(Lettering.Weight.REGULAR, 19, Ink.TEXT, Align.LEFT);
    static final Style PANEL = new Style(Lettering.Weight.STRONG, 18, Ink.TEXT, Align.LEFT);
    static final Style CAPTION = new Style(Lettering.Weight.STRONG, 20, Ink.TEXT, Align.LEFT);
    static final Style CAPTION_MORE =
        new Style(Lettering.Weight.REGULAR, 20, Ink.QUIET, Align.LEFT);
    static final Style KEY = new Style(Lettering.Weight.REGULAR, 18, Ink.TEXT, Align.LEFT);
    static final Style KEY_MORE = new Style(Lettering.Weight.REGULAR, 16, Ink.QUIET, Align.LEFT);
    static final Style STEP = new Style(Lettering.Weight.STRONG, 15, Ink.QUIET, Align.LEFT);
    static final Style FOOT = new Style(Lettering.Weight.REGULAR, 16, Ink.QUIET, Align.LEFT);
    static final Style LABEL = new Style(Lettering.Weight.STRONG, 19, Ink.TEXT, Align.LEFT);
    static final Style LABEL_MORE = new Style(Lettering.Weight.REGULAR, 16, Ink.QUIET, Align.LEFT);

    Style in(Color other) {
      return new Style(weight, size, other, align);
    }

    Style at(Align other) {
      return new Style(weight, size, colour, other);
    }
  }

  double width(String words, Style style) {
    return Lettering.width(words, style.weight(), u(style.size()));
  }

  /** Writes words on a baseline. */
  void write(String words, double x, double y, Style style) {
    write(Lettering.line(words, style.weight(), u(style.size())), x, y, style);
  }

  private void write(TextLayout line, double x, double y, Style style) {
    ink(style.colour());
    line.draw(pen, (float) (x - style.align().share * line.getAdvance()), (float) y);
  }

  /** Writes lines from a baseline on, and gives the baseline of the line after them. */
  double paragraph(String words, Point2D from, Style style, Paragraph.Room room) {
    boolean rightToLeft = Lettering.isRightToLeft(words);
    double at = from.getY();
    for (String text : Paragraph.lines(words, style.weight(), u(style.size()), room)) {
      TextLayout line = Lettering.line(text, style.weight(), u(style.size()), rightToLeft);
      write(line, from.getX(), at, style);
      at += u(style.size() * LEADING);
    }
    return at;
  }

  /** Writes words with a rim of paper round them, so that they read on anything. */
  void writeClear(String words, double x, double y, Style style) {
    TextLayout line = Lettering.line(words, style.weight(), u(style.size()));
    Shape outline = line.getOutline(AffineTransform.getTranslateInstance(x, y));
    ink(Ink.faded(Ink.PAPER, 0.9));
    pen.setStroke(new BasicStroke((float) u(5), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(outline);
    ink(style.colour());
    line.draw(pen, (float) x, (float) y);
  }

  /** A straight line of a width given on the page of the default size. */
  void rule(Line2D line, double width, Color colour) {
    ink(colour);
    pen.setStroke(new BasicStroke((float) u(width), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    pen.draw(line);
  }

  /** A dashed straight line. */
  void dashes(Line2D line, double width, Color colour) {
    float[] dash = {(float) u(7), (float) u(5)};
    ink(colour);
    pen.setStroke(
        new BasicStroke(
            (float) u(width), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
    pen.draw(line);
  }

  @Override
  public void close() {
    pen.dispose();
  }
}
