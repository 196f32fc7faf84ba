// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.trial.FailureMode;
import boughwright.viewer.gl.Raster;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.scene.Wording;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws the marks of a scene over one view, and their words where there is room. */
final class MarkPainter {
  private static final double RING = 11;

  /** A shorter line before a number would read as a minus. */
  private static final double SHORTEST_LEADER = 20;

  /** How deep under a surface a place still counts as seen, as a share of the scene's size. */
  private static final double SEEN_SKIN = 0.006;

  /** The same for lines, which are thin. */
  private static final double LINE_SKIN = 0.002;

  /** From end to end of poses on the way that can be told apart by their words. */
  private static final double STAGE_ROOM = 9;

  /** More coils than this are told of in the key alone. */
  private static final int MOST_COILS_NAMED = 8;

  private final Page page;
  private final Scene scene;
  private final ViewFrame frame;
  private final DisplayUnits units;

  MarkPainter(Page page, Scene scene, ViewFrame frame) {
    this(page, scene, frame, DisplayUnits.USUAL);
  }

  /**
   * The same in other units.
   *
   * @param units what lengths and forces are told in
   */
  MarkPainter(Page page, Scene scene, ViewFrame frame, DisplayUnits units) {
    this.page = page;
    this.scene = scene;
    this.frame = frame;
    this.units = units;
  }

  /** Draws marks and words, as far as they find room and are not told in another view. */
  void paint(Raster raster, Told told) {
    paint(raster, told, List.of());
  }

  /** The same with some room kept free of words; gives the words that found room. */
  List<PlacedLabel> paint(Raster raster, Told told, List<Rect> free) {
    told.nextView();
    Occupancy occupancy = new Occupancy(raster);
    Rect inside = new Rect(0, 0, frame.area().width(), frame.area().height());
    LabelPlacer placer = new LabelPlacer(inside, occupancy, page.u(1));
    double soil = inView(scene.base().plus(new Vector3(0, 0, -scene.base().z())))[1];
    free.forEach(placer::keepFree);
    if (frame.camera().angle().elevation() == 0) {
      placer.keepFreeOfWords(new Rect(0, soil - page.u(1), inside.width(), page.u(2)));
    }
    List<Mark> marks = new ArrayList<>(scene.marks());
    marks.sort(Comparator.comparingInt(MarkPainter::order));
    keepOutlinesFree(placer);
    for (Mark mark : marks) {
      draw(mark, raster);
      keepFree(mark, placer);
    }
    List<PlacedLabel> placed = new ArrayList<>();
    for (Mark mark : marks) {
      Label label = label(mark, raster, occupancy);
      boolean inFull = !isHidden(mark, raster);
      if (!label.places().isEmpty() && !told.isEnough(mark, inFull)) {
        var found = placer.place(label, this::measure, told.isElsewhere(mark));
        found.ifPresent(placed::add);
        told.note(mark, found.isPresent(), inFull);
      }
    }
    placed.forEach(this::drawLeader);
    placed.forEach(this::drawWords);
    new FlawBadges(page, frame).paint(Mark.flaws(marks), occupancy);
    return placed;
  }

  private static int order(Mark mark) {
    if (mark instanceof Mark.Note note) {
      return note.picked() ? -1 : 6;
    }
    if (mark instanceof Mark.Hardest || mark instanceof Mark.Failure) {
      return 0;
    }
    if (mark instanceof Mark.Apex) {
      return 1;
    }
    if (mark instanceof Mark.Guy || mark instanceof Mark.Hand) {
      return 2;
    }
    return mark instanceof Mark.CutPlace
        ? 5
        : mark instanceof Mark.Wire || mark instanceof Mark.AidPlace ? 4 : 3;
  }

  private Label label(Mark mark, Raster raster, Occupancy occupancy) {
    List<double[]> places = new ArrayList<>();
    if (mark instanceof Mark.Guy guy) {
      places.addAll(seen(guy, raster, occupancy));
    } else if (mark instanceof Mark.Wire wire) {
      places.addAll(seen(wire, raster));
    } else if (!(mark instanceof Mark.Flaw)
        && (!(mark instanceof Mark.StageEnd) || areStagesApart())) {
      places.add(inView(mark.at()));
    }
    double clearance = isRinged(mark) ? RING + 5 : mark instanceof Mark.Apex ? 16 : 9;
    if (mark instanceof Mark.Weight weight) {
      clearance += 1.2 * weight.radius() * frame.camera().pixelsPerMetre() / page.u(1);
    }
    if (mark instanceof Mark.Note note) {
      clearance += note.radius() * frame.camera().scaleAt(note.at()) / page.u(1);
    }
    boolean quiet =
        mark instanceof Mark.Note note && !note.picked()
            || mark instanceof Mark.StageEnd
            || mark instanceof Mark.Wire
            || mark instanceof Mark.AidPlace;
    Label label = new Label(places, page.u(clearance), told(mark), colour(mark), quiet);
    return mark instanceof Mark.Failure && isHidden(mark, raster) ? label.firstLineOnly() : label;
  }

  private static boolean isRinged(Mark mark) {
    return mark instanceof Mark.Hardest || mark instanceof Mark.Failure;
  }

  private static Color colour(Mark mark) {
    if (mark instanceof Mark.Failure failure) {
      return Glyph.colour(failure.mode());
    }
    if (mark instanceof Mark.StageEnd) {
      return Ink.STAGE;
    }
    return mark instanceof Mark.Apex ? Ink.APEX : Ink.TEXT;
  }

  /** Its words in the units of display. */
  List<String> told(Mark mark) {
    return words(mark).stream().map(units::inWords).toList();
  }

  /** In a view from the side only the offset that is seen there is told. */
  private List<String> words(Mark mark) {
    double turn = frame.camera().angle().azimuth() - scene.front();
    boolean level = frame.camera().angle().elevation() == 0;
    if (mark instanceof Mark.Apex apex && level && Math.abs(Math.sin(turn)) > 0.999) {
      return List.of(apex.words().get(0), Wording.beside(0, apex.behind()));
    }
    if (mark instanceof Mark.Apex apex && Math.cos(turn) < 0.999) {
      return List.of(apex.words().get(0), apex.words().get(1), "seen from the front");
    }
    return mark.words();
  }

  /** Places on a line that are seen in this view, those with the most paper round them first. */
  private List<double[]> seen(Mark.Guy guy, Raster raster, Occupancy occupancy) {
    List<double[]> places = new ArrayList<>();
    for (int n = 2; n <= 19; n++) {
      Point3 point = guy.pad().toward(guy.anchor(), n / 20.0);
      if (!raster.hides(point, LINE_SKIN * scene.bounds().diagonal())) {
        places.add(inView(point));
      }
    }
    places.sort(
        Comparator.comparingDouble(
            at -> occupancy.share(new Rect(at[0], at[1], 0, 0).grown(page.u(16)))));
    return places;
  }

  /** Places on a coil that are seen in this view; none where the key has to tell of many. */
  private List<double[]> seen(Mark.Wire wire, Raster raster) {
    if (scene.marks().stream().filter(Mark.Wire.class::isInstance).count() > MOST_COILS_NAMED) {
      return List.of();
    }
    double skin = wire.coil().gauge() / 2 + LINE_SKIN * scene.bounds().diagonal();
    return wire.places().stream()
        .filter(place -> !raster.hides(place, skin))
        .map(this::inView)
        .toList();
  }

  /** Whether the poses on the way are seen beside each other in this view, not on each other. */
  private boolean areStagesApart() {
    List<double[]> ends =
        scene.marks().stream()
            .filter(Mark.StageEnd.class::isInstance)
            .map(mark -> inView(mark.at()))
            .toList();
    double[] first = ends.get(0);
    double[] last = ends.get(ends.size() - 1);
    double room = page.u(STAGE_ROOM) * (ends.size() - 1);
    return Math.hypot(last[0] - first[0], last[1] - first[1]) >= room;
  }

  private double[] inView(Point3 point) {
    Camera.Pixel pixel = frame.camera().project(point);
    return new double[] {pixel.x(), pixel.y()};
  }

  private double[] onPage(Point3 point) {
    double[] at = inView(point);
    return new double[] {frame.area().x() + at[0], frame.area().y() + at[1]};
  }

  /** Labels stay off what stays, for it is drawn thin. */
  private void keepOutlinesFree(LabelPlacer placer) {
    for (StagesView.Outline outline : scene.stages().map(StagesView::stays).orElse(List.of())) {
      int step = Math.max(1, outline.axis().size() / 8);
      for (int n = 0; n + 1 < outline.axis().size(); n += step) {
        int next = Math.min(outline.axis().size() - 1, n + step);
        placer.avoid(line(outline.axis().get(n), outline.axis().get(next)));
      }
    }
  }

  private Line2D line(Point3 from, Point3 to) {
    double[] a = inView(from);
    double[] b = inView(to);
    return new Line2D.Double(a[0], a[1], b[0], b[1]);
  }

  private void keepFree(Mark mark, LabelPlacer placer) {
    if (mark instanceof Mark.Guy guy) {
      placer.avoid(line(guy.pad(), guy.anchor()));
    }
    if (mark instanceof Mark.Hand hand) {
      HandArrow.of(page, frame, hand).keepFree(placer);
    }
    double[] at = inView(mark.at());
    if (isRinged(mark) || mark instanceof Mark.Apex) {
      placer.keepFree(new Rect(at[0], at[1], 0, 0).grown(page.u(RING)));
    }
    if (mark instanceof Mark.Apex apex) {
      double[] foot = inView(apex.foot());
      placer.keepFree(new Rect(foot[0], foot[1], 0, 0).grown(page.u(9)));
      placer.keepFree(new Rect(at[0], at[1] - page.u(10), 0, 0).grown(page.u(11)));
      placer.avoid(new Line2D.Double(at[0], at[1], foot[0], foot[1]));
    }
  }

  private void draw(Mark mark, Raster raster) {
    if (mark instanceof Mark.Apex apex) {
      new ApexPen(page).draw(onPage(apex.at()), onPage(apex.foot()), onPage(apex.base()));
    } else if (mark instanceof Mark.Hand hand) {
      HandArrow.of(page, frame, hand).draw(page, frame.area());
    } else if (mark instanceof Mark.Hardest) {
      ring(mark, new Ring(FailureMode.CRACK, Ink.TEXT), raster);
    } else if (mark instanceof Mark.Failure failure) {
      ring(mark, new Ring(failure.mode(), colour(mark)), raster);
    }
  }

  private boolean isHidden(Mark mark, Raster raster) {
    return raster.hides(mark.at(), SEEN_SKIN * scene.bounds().diagonal());
  }

  /** How a place on the bark is ringed: the shape of a way to fail, and a colour. */
  private record Ring(FailureMode shape, Color colour) {}

  private void ring(Mark mark, Ring ring, Raster raster) {
    double[] at = onPage(mark.at());
    boolean hidden = isHidden(mark, raster);
    Glyph.draw(page, Glyph.shape(ring.shape(), at[0], at[1], page.u(RING)), ring.colour(), hidden);
  }

  private double[] measure(Label label) {
    double width = 0;
    for (int n = 0; n < label.words().size(); n++) {
      width = Math.max(width, page.width(label.words().get(n), style(label, n)));
    }
    return new double[] {width, page.u(22 + 20 * (label.words().size() - 1))};
  }

  private static Page.Style style(Label label, int line) {
    if (line == 0 && label.quiet()) {
      return Page.Style.STEP.in(label.colour());
    }
    return line == 0 ? Page.Style.LABEL.in(label.colour()) : Page.Style.LABEL_MORE;
  }

  private void drawLeader(PlacedLabel placed) {
    double[] meets = placed.meets();
    double dx = meets[0] - placed.x();
    double dy = meets[1] - placed.y();
    double length = Math.hypot(dx, dy);
    double from = placed.label().clearance() - page.u(3);
    double to = length - page.u(7);
    if (to - from < page.u(SHORTEST_LEADER)) {
      return;
    }
    double x = frame.area().x() + placed.x();
    double y = frame.area().y() + placed.y();
    Line2D leader =
        new Line2D.Double(
            x + dx * from / length,
            y + dy * from / length,
            x + dx * to / length,
            y + dy * to / length);
    page.rule(leader, 3.6, Ink.faded(Ink.PAPER, 0.7));
    page.rule(leader, 1.4, placed.label().leader());
  }

  private void drawWords(PlacedLabel placed) {
    double x = frame.area().x() + placed.box().x();
    double y = frame.area().y() + placed.box().y() + page.u(17);
    for (int n = 0; n < placed.label().words().size(); n++) {
      page.writeClear(
          placed.label().words().get(n), x, y + page.u(20) * n, style(placed.label(), n));
    }
  }
}
