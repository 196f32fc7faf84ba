// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.gl.Raster;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Scene;
import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Marks and words of a scene as a clear sheet to be laid over a view of it. */
public final class SceneWords {
  private static final double EDGE = 22;
  private static final double LONGEST_BAR = 200;

  /** On a view that is lower there would be more words than tree. */
  private static final double LOWEST_WITH_LEGEND = 260;

  private static final double LOWEST_WITH_BAR = 130;

  /** So near to the edge of the view nothing is written. */
  private static final double BORDER = 8;

  private static final double LEGEND_SIDES = 64;

  /** The legend leaves the scale bar so much of the foot. */
  private static final double LEAST_BAR = 110;

  private static final double LEGEND_HEIGHT = 74;

  /** On a bar that is narrower its words would not find room. */
  private static final double LEAST_LEGEND = 150;

  private SceneWords() {}

  /**
   * What is written.
   *
   * @param unit what a pixel of a page of the default size is here [pixels]
   * @param dark whether the sheet lies on a dark ground
   * @param parts what it is
   * @param units what lengths and forces are told in
   */
  public record Wanted(double unit, boolean dark, Set<Part> parts, DisplayUnits units) {
    public Wanted {
      parts = Set.copyOf(parts);
    }
  }

  /** Something that may be written. */
  public enum Part {
    /** Lines, coils, weak places and the apex. */
    MARKS,
    /** A scale bar. */
    BAR
  }

  /** The sheet, as large as the view. */
  public static BufferedImage sheet(Scene scene, Raster raster, Wanted wanted) {
    BufferedImage image =
        new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_ARGB_PRE);
    UnaryOperator<Color> tones = wanted.dark() ? Ink::byNight : UnaryOperator.identity();
    try (Page page = new Page(image, wanted.unit(), tones)) {
      Rect whole = new Rect(0, 0, raster.width(), raster.height());
      ViewFrame frame = new ViewFrame(whole, raster.camera(), "", "", 0);
      List<Rect> free = foot(page, scene, frame, wanted);
      boolean all = wanted.parts.contains(Part.MARKS);
      new MarkPainter(page, all ? scene : scene.withNotesOnly(), frame, wanted.units)
          .paint(raster, new Told(1), free);
    }
    return image;
  }

  /** Draws the scale bar and the legend at the foot, and says where they are. */
  private static List<Rect> foot(Page page, Scene scene, ViewFrame frame, Wanted wanted) {
    List<Rect> taken = new ArrayList<>(border(frame.area(), page.u(BORDER)));
    boolean isBar = wanted.parts.contains(Part.BAR);
    double bottom = frame.area().bottom() - page.u(EDGE);
    double whole = frame.area().width() - 2 * page.u(EDGE);
    double most = whole - (isBar ? page.u(LEAST_BAR) : 0);
    double width = Legend.width(page, most);
    boolean told =
        scene.scale().isPresent()
            && width > page.u(LEAST_LEGEND)
            && frame.area().height() > page.u(LOWEST_WITH_LEGEND);
    double legend = told ? width + page.u(LEGEND_SIDES) : 0;
    double room = whole - legend;
    if (told) {
      double more = Legend.more(page, scene.scale().get(), width);
      double y = bottom - page.u(36);
      double top = bottom - page.u(LEGEND_HEIGHT) - more;
      Rect plate =
          new Rect(
              frame.area().right() - legend - page.u(EDGE / 2),
              top - page.u(8),
              legend,
              page.u(LEGEND_HEIGHT + 14) + more);
      plate(page, plate);
      taken.add(plate);
      Point2D end = new Point2D.Double(frame.area().right() - page.u(EDGE), y);
      Legend.draw(page, scene.scale().get(), end, width);
    }
    boolean high = frame.area().height() > page.u(LOWEST_WITH_BAR);
    if (isBar && high && room > page.u(60)) {
      Camera camera = frame.camera();
      double longest = Math.min(page.u(LONGEST_BAR), room - page.u(EDGE));
      ScaleBar bar = ScaleBar.fitting(camera.scaleAt(scene.base()), longest, wanted.units.length());
      String words = camera.isFlat() ? bar.words() : bar.words() + " at the trunk";
      double y = bottom - page.u(10);
      double wide = Math.max(bar.pixels(), page.width(words, Page.Style.KEY));
      Rect plate = new Rect(page.u(EDGE / 2), y - page.u(34), wide + page.u(EDGE), page.u(50));
      plate(page, plate);
      taken.add(plate);
      bar.draw(page, page.u(EDGE) + (wide - bar.pixels()) / 2, y, words);
    }
    return taken;
  }

  private static List<Rect> border(Rect view, double width) {
    return List.of(
        new Rect(0, 0, view.width(), width),
        new Rect(0, view.height() - width, view.width(), width),
        new Rect(0, 0, width, view.height()),
        new Rect(view.width() - width, 0, width, view.height()));
  }

  /** A piece of the ground, nearly covering, so that what is written on it reads on anything. */
  private static void plate(Page page, Rect rect) {
    page.ink(Ink.faded(Ink.PAPER, 0.85));
    page.pen()
        .fill(
            new RoundRectangle2D.Double(
                rect.x(), rect.y(), rect.width(), rect.height(), page.u(10), page.u(10)));
  }
}
