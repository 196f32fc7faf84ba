// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.stage.Course;
import boughwright.viewer.gl.Raster;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Scene;
import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts heading, views, key, legend, scale bar and footnote on a page. */
final class Composer {
  private static final double MARGIN = 60;
  private static final double FRAME = 24;

  /** From the foot of the views to the middle of the footer's first row. */
  private static final double FOOTER_GAP = 26;

  private static final double LONGEST_BAR = 230;

  /** From baseline to baseline of the notes at the foot, and how high their letters are. */
  private static final double NOTE_STEP = 22;

  private static final double NOTE_HEIGHT = 16;

  /** Where the verdict has told the trouble already. */
  private static final String NOTHING_BENT = "Shown as measured; nothing is bent.";

  private final Page page;
  private final Scene scene;
  private final Heading heading;
  private final List<String> footnote;
  private final Key key;

  Composer(Page page, Scene scene, Heading heading, List<String> footnote) {
    this.page = page;
    this.scene = scene;
    this.heading = heading;
    this.footnote = footnote;
    key = new Key(page, scene);
  }

  /** Draws everything; the renderer belongs to this thread. */
  List<ViewFrame> compose(List<Arrangement.Wanted> wanted, SceneRenderer renderer) {
    return compose(wanted, renderer, Optional.empty());
  }

  /**
   * Draws everything; the renderer belongs to this thread.
   *
   * @param course what goes on over time, drawn under the views of a pose that holds
   */
  List<ViewFrame> compose(
      List<Arrangement.Wanted> wanted, SceneRenderer renderer, Optional<Course> course) {
    Rect area = drawAround(course);
    List<ViewFrame> frames = new Arrangement(page, scene, area).arrange(wanted);
    drawViews(frames, renderer);
    return frames;
  }

  /** Draws the views and what is told under them. */
  void drawViews(List<ViewFrame> frames, SceneRenderer renderer) {
    Told told = new Told(frames.size());
    for (ViewFrame frame : frames) {
      drawView(frame, renderer, told);
    }
    drawFooter(frames.get(0).camera().pixelsPerMetre(), told.missing());
  }

  private double width() {
    return page.image().getWidth() - 2 * page.u(MARGIN);
  }

  /** Draws all but the views, and gives the room that is left for them. */
  Rect drawAround(Optional<Course> course) {
    double margin = page.u(MARGIN);
    double width = width();
    drawFrame(page);
    double top = drawHeading(margin, width);
    double bottom = footerTop(width) - page.u(FOOTER_GAP) - margin * 0.5;
    Rect whole = new Rect(margin, top, width, bottom - top);
    Rect free = new FlawPanel(page, Mark.flaws(scene.marks())).draw(whole);
    Rect beside = scene.risk().map(risk -> new RiskPanel(page, risk).draw(free)).orElse(free);
    return course
        .filter(c -> scene.trouble().isEmpty())
        .map(c -> new CoursePanel(page, c).draw(beside))
        .orElse(beside);
  }

  /** The line round everything on a page. */
  static void drawFrame(Page page) {
    double in = page.u(FRAME);
    page.pen().setColor(Ink.FRAME);
    page.pen().setStroke(new BasicStroke((float) page.u(1.5)));
    page.pen()
        .draw(
            new Rectangle2D.Double(
                in, in, page.image().getWidth() - 2 * in, page.image().getHeight() - 2 * in));
  }

  private double drawHeading(double left, double width) {
    Paragraph.Room two = new Paragraph.Room(width, 2);
    double y =
        page.paragraph(heading.name(), new Point2D.Double(left, page.u(92)), Page.Style.NAME, two);
    y =
        page.paragraph(
            heading.about(), new Point2D.Double(left, y - page.u(12)), Page.Style.ABOUT, two);
    y = verdict(y, left, two);
    if (scene.trouble().isPresent()) {
      Paragraph.Room three = new Paragraph.Room(width, 3);
      y =
          page.paragraph(
              heading.verdict().isBlank() ? scene.trouble().get() : NOTHING_BENT,
              new Point2D.Double(left, y + page.u(6)),
              Page.Style.TROUBLE,
              three);
    }
    return y - page.u(10);
  }

  private double verdict(double top, double left, Paragraph.Room two) {
    if (heading.verdict().isBlank()) {
      return top;
    }
    double y = top + page.u(10);
    y = page.paragraph(heading.verdict(), new Point2D.Double(left, y), Page.Style.VERDICT, two);
    for (String words : List.of(heading.reason(), heading.change())) {
      if (!words.isBlank()) {
        y += page.u(3);
        double size = page.u(Page.Style.WHY.size());
        String whole = Sentences.fitting(words, Page.Style.WHY.weight(), size, two);
        y = page.paragraph(whole, new Point2D.Double(left, y), Page.Style.WHY, two);
      }
    }
    return y;
  }

  private void drawView(ViewFrame frame, SceneRenderer renderer, Told told) {
    Soil.paint(page, frame, scene);
    Raster raster = renderer.draw(scene, frame.camera(), page.u(1));
    BufferedImage wood =
        new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_ARGB_PRE);
    raster.copyPixels(((DataBufferInt) wood.getRaster().getDataBuffer()).getData());
    page.pen().drawImage(wood, (int) frame.area().x(), (int) frame.area().y(), null);
    scene
        .stages()
        .ifPresent(stages -> stages.stays().forEach(limb -> OutlinePen.draw(page, frame, limb)));
    new MarkPainter(page, scene, frame).paint(raster, told);
    drawCaption(frame);
  }

  /** The name of a view and, where there is room, from where it is seen. */
  private void drawCaption(ViewFrame frame) {
    double name = page.width(frame.name(), Page.Style.CAPTION);
    double more = page.u(12) + page.width(frame.more(), Page.Style.CAPTION_MORE);
    boolean whole = name + more <= frame.area().width();
    double left = frame.area().centreX() - (name + (whole ? more : 0)) / 2;
    page.write(frame.name(), left, frame.captionY(), Page.Style.CAPTION);
    if (whole) {
      page.write(frame.more(), left + name + page.u(12), frame.captionY(), Page.Style.CAPTION_MORE);
    }
  }

  /** Where the key's rows go, beside the widest scale bar and the colours of strain. */
  private Key.Room keyRoom(double left, double width) {
    double strain = scene.scale().isPresent() ? page.u(Legend.ROOM) : 0;
    return new Key.Room(left + page.u(LONGEST_BAR + 56), left + width - strain);
  }

  /** Where the middle of the footer's first row is [pixels]. */
  private double footerTop(double width) {
    int rows = key.rowCount(keyRoom(page.u(MARGIN), width));
    double usual = page.image().getHeight() - page.u(104) - page.u(Key.ROW) * (rows - 1);
    double underLegend = firstNote(footnote.size()) - page.u(NOTE_HEIGHT + Legend.BELOW);
    return scene.scale().isPresent() ? Math.min(usual, underLegend) : usual;
  }

  /** Baseline of the first of so many notes at the foot [pixels]. */
  private double firstNote(int count) {
    return page.image().getHeight() - page.u(46) - page.u(NOTE_STEP) * (count - 1) / 2;
  }

  private void drawFooter(double pixelsPerMetre, long missing) {
    double left = page.u(MARGIN);
    double width = width();
    double y = footerTop(width);
    page.rule(new Line2D.Double(left, y - page.u(46), left + width, y - page.u(46)), 1, Ink.FRAME);
    ScaleBar.fitting(pixelsPerMetre, page.u(LONGEST_BAR)).draw(page, left, y);
    key.draw(keyRoom(left, width), y);
    scene.scale().ifPresent(scale -> Legend.draw(page, scale, left + width, y));
    List<String> notes = new ArrayList<>(footnote);
    if (missing > 0) {
      notes.add(missing + (missing == 1 ? " label" : " labels") + " found no room.");
    }
    double foot = firstNote(notes.size());
    for (String note : notes) {
      page.write(fitted(note, width), left, foot, Page.Style.FOOT);
      foot += page.u(NOTE_STEP);
    }
  }

  private String fitted(String words, double width) {
    double size = page.u(Page.Style.FOOT.size());
    Paragraph.Room line = new Paragraph.Room(width, 1);
    String whole = Sentences.fitting(words, Page.Style.FOOT.weight(), size, line);
    return Lettering.fitted(whole, Page.Style.FOOT.weight(), size, width);
  }
}
