// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.design.front.FrontMap;
import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.problem.InputException;
import boughwright.viewer.gl.NoGraphicsException;
import boughwright.viewer.gl.SceneRenderer;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;

/** A page with heading and foot, for fronts side by side or for the map of their score. */
final class FrontsSheet {
  private static final double MARGIN = 60;
  private static final double FOOT = 124;
  private static final double LONGEST_BAR = 230;

  private final Page page;
  private final FrontsWords text;

  private FrontsSheet(Page page, FrontsWords text) {
    this.page = page;
    this.text = text;
  }

  /**
   * Fronts side by side.
   *
   * @throws NoGraphicsException if this machine cannot draw
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  static BufferedImage fronts(PrintedPicture.Subject subject, FrontsWords text, PictureSize size)
      throws NoGraphicsException, InputException {
    Picture.requireLetters(text.name() + text.about());
    try (SceneRenderer renderer = SceneRenderer.open();
        Page page = new Page(size)) {
      FrontsSheet sheet = new FrontsSheet(page, text);
      Rect room = sheet.room();
      double scale = new FrontsPicture(page, subject, text.cards()).draw(room, renderer);
      double y = sheet.foot();
      ScaleBar bar = ScaleBar.fitting(scale, page.u(LONGEST_BAR));
      double end = bar.draw(page, room.x(), y);
      sheet.note(end + page.u(40), y + page.u(6));
      return page.image();
    }
  }

  /**
   * The map of the score.
   *
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  static BufferedImage map(FrontMap map, FrontsWords text, PictureSize size) throws InputException {
    Picture.requireLetters(text.name() + text.about());
    try (Page page = new Page(size)) {
      FrontsSheet sheet = new FrontsSheet(page, text);
      Rect room = sheet.room();
      double end = new FrontMapPlot(page, map, text.cards()).draw(room, sheet.foot());
      sheet.note(end + page.u(40), sheet.foot() + page.u(6));
      return page.image();
    }
  }

  /**
   * The root base of one front from above.
   *
   * @throws InputException if a name has letters that no typeface of this machine has
   */
  static BufferedImage roots(GroundAnswer answer, FrontsWords text, PictureSize size)
      throws InputException {
    Picture.requireLetters(text.name() + text.about());
    try (Page page = new Page(size)) {
      FrontsSheet sheet = new FrontsSheet(page, text);
      Rect room = sheet.room();
      RootPlot plot = new RootPlot(page, answer);
      double scale = plot.draw(room);
      double y = sheet.foot();
      ScaleBar bar = ScaleBar.fitting(scale, page.u(LONGEST_BAR));
      double end = plot.key(bar.draw(page, room.x(), y) + page.u(40), y + page.u(6));
      sheet.note(end + page.u(10), y + page.u(6));
      return page.image();
    }
  }

  /** Draws the heading and gives the room between it and the foot. */
  private Rect room() {
    Composer.drawFrame(page);
    double left = page.u(MARGIN);
    double width = page.image().getWidth() - 2 * left;
    Paragraph.Room two = new Paragraph.Room(width, 2);
    double y = page.paragraph(text.name(), at(left, page.u(92)), Page.Style.NAME, two);
    y = page.paragraph(text.about(), at(left, y - page.u(12)), Page.Style.ABOUT, two);
    y = page.paragraph(text.statement(), at(left, y + page.u(10)), Page.Style.WHY, two);
    double top = y - page.u(6);
    return new Rect(left, top, width, page.image().getHeight() - page.u(FOOT + 28) - top);
  }

  /** Where the middle of the foot is, under its rule. */
  private double foot() {
    double left = page.u(MARGIN);
    double right = page.image().getWidth() - left;
    double y = page.image().getHeight() - page.u(FOOT);
    page.rule(new Line2D.Double(left, y, right, y), 1, Ink.FRAME);
    return y + page.u(50);
  }

  private void note(double left, double y) {
    double right = page.image().getWidth() - page.u(MARGIN);
    page.paragraph(text.note(), at(left, y), Page.Style.FOOT, new Paragraph.Room(right - left, 2));
  }

  private static Point2D at(double x, double y) {
    return new Point2D.Double(x, y);
  }
}
