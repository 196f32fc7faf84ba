// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.problem.VisibleText;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.Range;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The pull left in each line over time; of many lines those that pull hardest. */
final class TensionPlot {
  /** Lines that a plot tells apart. */
  static final int MOST = 6;

  private static final double HEAD_ROOM = 1.06;
  private static final double LEAST_PULL = 0.1;
  private static final double MOST_WORDS = 120;
  private static final double ROW = 17;

  /** From the end of a curve to its name. */
  private static final double LEADER = 18;

  private static final double[] DASHES = {0, 0, 0, 9, 9, 9};

  /** A pull less than this part of the highest one is none: the line hangs loose [1]. */
  private static final double LOOSE = 0.01;

  private final Page page;
  private final Course course;
  private final List<String> lines;
  private final int left;

  TensionPlot(Page page, Course course) {
    this.page = page;
    this.course = course;
    List<String> all = new ArrayList<>(lines(course));
    all.sort(Comparator.comparingDouble(this::highest).reversed());
    left = Math.max(0, all.size() - MOST);
    lines = all.stream().limit(MOST).sorted().toList();
  }

  /** Ids of the lines of a course, in order. */
  static TreeSet<String> lines(Course course) {
    TreeSet<String> ids = new TreeSet<>();
    course.samples().forEach(sample -> ids.addAll(sample.tensions().keySet()));
    return ids;
  }

  private List<Course.Sample> samples(String id) {
    return course.samples().stream().filter(s -> s.tensions().containsKey(id)).toList();
  }

  private double highest(String id) {
    return samples(id).stream().mapToDouble(s -> s.tensions().get(id).high()).max().orElse(0);
  }

  void draw(Rect room, double end) {
    double most = lines.stream().mapToDouble(this::highest).max().orElse(0);
    double words =
        lines.stream().mapToDouble(id -> page.width(words(id), Page.Style.STEP)).max().orElse(0);
    TimePlot plot =
        new TimePlot(
            page,
            new TimePlot.Place(room, words + page.u(LEADER + 6)),
            end,
            HEAD_ROOM * Math.max(LEAST_PULL, most));
    String more = left > 0 ? ", the " + MOST + " hardest of " + (MOST + left) : "";
    plot.drawFrame(
        new TimePlot.Words("Pull left in each line, N", "nine in ten within the band" + more, ""),
        course.steps());
    for (int n = 0; n < lines.size(); n++) {
      String id = lines.get(n);
      plot.curve(samples(id), s -> s.tensions().get(id), look(n));
      int number = n;
      loosens(id, most).ifPresent(at -> ring(plot, at, Ink.SERIES.get(number)));
    }
    name(plot);
  }

  private static TimePlot.Look look(int n) {
    return new TimePlot.Look(Ink.SERIES.get(n), DASHES[n]);
  }

  /** A line's name at its curve; long ones are shortened. */
  private String words(String id) {
    double size = page.u(Page.Style.STEP.size());
    return Lettering.fitted(VisibleText.of(id), Page.Style.STEP.weight(), size, page.u(MOST_WORDS));
  }

  /** When a line first hangs loose under the best guess. */
  private Optional<Course.Sample> loosens(String id, double most) {
    return samples(id).stream()
        .filter(s -> s.tensions().get(id).middle() <= LOOSE * most)
        .findFirst();
  }

  private void ring(TimePlot plot, Course.Sample sample, Color colour) {
    double at = plot.x(sample.time());
    double r = page.u(5);
    page.pen().setColor(Ink.PAPER);
    Ellipse2D ring = new Ellipse2D.Double(at - r, plot.y(0) - r, 2 * r, 2 * r);
    page.pen().fill(ring);
    page.pen().setColor(colour);
    page.pen().setStroke(new BasicStroke((float) page.u(1.6)));
    page.pen().draw(ring);
    String words = "slack";
    double width = page.width(words, Page.Style.STEP);
    double x = Math.min(at + page.u(8), plot.box().right() - width - page.u(4));
    page.writeClear(words, x, plot.y(0) - page.u(9), Page.Style.STEP.in(colour));
  }

  /** Where a name goes. */
  private record Name(String words, Color colour, double y) {}

  /** Writes the names beside the ends of the curves, in their order and clear of each other. */
  private void name(TimePlot plot) {
    List<Name> names = new ArrayList<>();
    for (int n = 0; n < lines.size(); n++) {
      List<Course.Sample> samples = samples(lines.get(n));
      Range last = samples.get(samples.size() - 1).tensions().get(lines.get(n));
      names.add(new Name(words(lines.get(n)), Ink.SERIES.get(n), plot.y(last.middle())));
    }
    names.sort(Comparator.comparingDouble(Name::y));
    double[] places =
        Spread.apart(
            names.stream().mapToDouble(Name::y).toArray(),
            Math.min(page.u(ROW), plot.box().height() / Math.max(1, names.size())),
            new Spread.Room(plot.box().y() + page.u(6), plot.box().bottom()));
    double right = plot.box().right();
    for (int n = 0; n < names.size(); n++) {
      page.rule(
          new Line2D.Double(
              right + page.u(1), names.get(n).y(), right + page.u(LEADER - 3), places[n]),
          1.2,
          names.get(n).colour());
      page.write(
          names.get(n).words(),
          right + page.u(LEADER),
          places[n] + page.u(5),
          Page.Style.STEP.in(names.get(n).colour()));
    }
  }
}
