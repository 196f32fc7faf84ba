// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.gl.Raster;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.FrontScene;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.ViewAngle;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;

/** Fronts of a tree side by side in one scale, each as it stands, with its words under it. */
final class FrontsPicture {
  private static final double GAP = 22;
  private static final double TITLE = 30;
  private static final double ABOUT_GAP = 6;
  private static final double LINE_GAP = 5;
  private static final double SMALLEST_WORDS = 16;
  private static final double LARGEST_WORDS = 21;

  /** Share of the room below the heading that is kept for words [1]. */
  private static final double WORDS_SHARE = 0.36;

  /** Share of the width that one front takes at most, where there are few [1]. */
  private static final double WIDEST = 0.5;

  private static final double HEAD_ROOM = 34;
  private static final double SOIL_ROOM = 44;

  /** Most lines of one sentence. */
  private static final int LINES = 4;

  private static final Page.Style TITLE_STYLE = Page.Style.CAPTION;
  private final Page page;
  private final List<Cell> cells;

  /** A card, its scene and how far that reaches. */
  private record Cell(FrontCard card, Scene scene, ViewAngle angle, Extent extent) {
    static Cell of(PrintedPicture.Subject subject, FrontCard card) {
      Scene scene =
          FrontScene.of(subject.document(), subject.plan(), card.pose(), subject.inLeaf());
      ViewAngle angle = ViewAngle.level(card.pose().azimuth());
      return new Cell(card, scene, angle, Extent.of(scene, angle));
    }
  }

  /**
   * @param plan whose cuts are made; empty for the uncut tree
   * @param cards at least one
   */
  FrontsPicture(Page page, PrintedPicture.Subject subject, List<FrontCard> cards) {
    this.page = page;
    cells = cards.stream().map(card -> Cell.of(subject, card)).toList();
  }

  /** Draws them into a room; gives the scale [pixels per metre]. */
  double draw(Rect room, SceneRenderer renderer) {
    double gaps = page.u(GAP) * (cells.size() - 1);
    double width = Math.min((room.width() - gaps) / cells.size(), room.width() * WIDEST);
    double most = room.height() * (1 - WORDS_SHARE);
    double scale = scale(width, most);
    double low = cells.stream().mapToDouble(cell -> cell.extent().low()).min().orElse(0);
    double below = Math.max(page.u(SOIL_ROOM), -low * scale + page.u(12));
    double tall = highest() * scale + page.u(HEAD_ROOM) + below;
    Rect trees = new Rect(room.x(), room.y(), room.width(), Math.min(most, tall));
    double words = room.height() - trees.height();
    double size = wordsSize(width, words);
    double soil = Math.rint(trees.bottom() - below);
    for (int n = 0; n < cells.size(); n++) {
      double left = Math.rint(room.x() + n * (width + page.u(GAP)));
      Rect area = new Rect(left, Math.rint(trees.y()), Math.rint(width), Math.rint(trees.height()));
      tree(cells.get(n), frame(cells.get(n), area, scale, soil), renderer);
      words(cells.get(n).card(), new Rect(left, trees.bottom(), width, words), size);
    }
    return scale;
  }

  private double scale(double width, double height) {
    double widest = cells.stream().mapToDouble(cell -> cell.extent().width()).max().orElseThrow();
    double high = highest();
    double low = cells.stream().mapToDouble(cell -> cell.extent().low()).min().orElseThrow();
    double tall = height - page.u(HEAD_ROOM) - page.u(SOIL_ROOM);
    return Math.min((width - page.u(GAP)) / widest, tall / Math.max(high - low, 1e-6));
  }

  private double highest() {
    return cells.stream().mapToDouble(cell -> cell.extent().high()).max().orElseThrow();
  }

  private ViewFrame frame(Cell cell, Rect area, double scale, double soil) {
    double middle = (cell.extent().left() + cell.extent().right()) / 2;
    double above = (soil - area.y() - area.height() / 2) / scale;
    Point3 target =
        cell.scene()
            .base()
            .plus(cell.angle().right().times(middle))
            .plus(cell.angle().up().times(above));
    double depth = 2 * cell.scene().bounds().diagonal() + Math.abs(above);
    Camera camera =
        new Camera(cell.angle(), target, scale, (int) area.width(), (int) area.height(), depth);
    return new ViewFrame(area, camera, cell.card().title(), "", soil);
  }

  private void tree(Cell cell, ViewFrame frame, SceneRenderer renderer) {
    Soil.paint(page, frame, cell.scene());
    plumb(cell, frame);
    Raster raster = renderer.draw(cell.scene(), frame.camera(), page.u(1));
    BufferedImage wood =
        new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_ARGB_PRE);
    raster.copyPixels(((DataBufferInt) wood.getRaster().getDataBuffer()).getData());
    page.pen().drawImage(wood, (int) frame.area().x(), (int) frame.area().y(), null);
  }

  /** A plumb line through the middle of the root base, seen past the tree at both ends. */
  private void plumb(Cell cell, ViewFrame frame) {
    Camera.Pixel base = frame.camera().project(cell.scene().base());
    double x = frame.area().x() + base.x();
    double top =
        frame.area().y()
            + base.y()
            - cell.extent().high() * frame.camera().pixelsPerMetre()
            - page.u(HEAD_ROOM / 2);
    page.dashes(
        new Line2D.Double(x, Math.max(frame.area().y(), top), x, frame.area().y() + base.y()),
        1.2,
        Ink.HAIR);
  }

  /** The largest size at which the words of every front have room; else the smallest. */
  private double wordsSize(double width, double height) {
    double size = LARGEST_WORDS;
    while (size > SMALLEST_WORDS && tallest(width, size) > height) {
      size -= 1;
    }
    return size;
  }

  private double tallest(double width, double size) {
    return cells.stream().mapToDouble(cell -> tall(cell.card(), width, size)).max().orElse(0);
  }

  /** How far down the words under a front reach in a size [pixels]. */
  private double tall(FrontCard card, double width, double size) {
    Paragraph.Room room = new Paragraph.Room(width, LINES);
    int lines = lines(card.about(), size, room);
    for (String line : card.lines()) {
      lines += lines(line, size, room);
    }
    double gaps = page.u(ABOUT_GAP + LINE_GAP * card.lines().size());
    return page.u(TITLE) + page.u(size * Page.LEADING) * (lines + 1) + gaps;
  }

  private int lines(String words, double size, Paragraph.Room room) {
    return Paragraph.lines(words, Lettering.Weight.REGULAR, page.u(size), room).size();
  }

  private void words(FrontCard card, Rect room, double size) {
    double y = room.y() + page.u(TITLE);
    page.write(card.title(), room.x(), y, TITLE_STYLE);
    y += page.u(size * Page.LEADING);
    y = paragraph(card.about(), room, y, style(size, Ink.QUIET)) + page.u(ABOUT_GAP);
    for (String line : card.lines()) {
      y = paragraph(line, room, y, style(size, Ink.TEXT)) + page.u(LINE_GAP);
    }
  }

  private static Page.Style style(double size, Color ink) {
    return new Page.Style(Lettering.Weight.REGULAR, size, ink, Page.Align.LEFT);
  }

  /** Writes as much as there is room for, and gives the next baseline. */
  private double paragraph(String words, Rect room, double y, Page.Style style) {
    double step = page.u(style.size() * Page.LEADING);
    int most = (int) Math.floor((room.bottom() - y) / step);
    if (most < 1 || words.isBlank()) {
      return y;
    }
    Paragraph.Room lines = new Paragraph.Room(room.width(), Math.min(LINES, most));
    return page.paragraph(words, new Point2D.Double(room.x(), y), style, lines);
  }
}
