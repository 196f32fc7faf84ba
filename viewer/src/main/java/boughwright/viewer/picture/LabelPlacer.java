// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for labels, one after another: inside the view, clear of each other, away from the
 * wood where there is room, close to what they name.
 */
final class LabelPlacer {
  private static final int DIRECTIONS = 24;
  private static final double[] REACHES = {0, 14, 30, 50, 75, 105, 140, 180, 230, 290, 360, 450};
  private static final double WOOD_COST = 900;
  private static final double LEADER_WOOD_COST = 110;

  /** For each pixel of a line to a label that runs over wood, beyond where it starts. */
  private static final double LEADER_COVER_COST = 2;

  private static final double LEADER_START = 30;
  private static final double CROSSING_COST = 1200;
  private static final double TOUCH_COST = 70;
  private static final double LINE_CLEARANCE = 4;

  /** A label that would cost more, such as one over a line, waits for another view. */
  private static final double MOST_IF_ELSEWHERE = 1000;

  /** Standing so much better is worth all words but the first line. */
  private static final double SHORTENING_COST = 160;

  /** What is longer than this of the line to a label costs twice. */
  private static final double LONG = 110;

  /** A quiet label that would cost more is left out. */
  private static final double MOST_FOR_QUIET = 230;

  private static final double OTHER_PLACE_COST = 6;

  private final Rect view;
  private final Occupancy occupancy;
  private final double unit;
  private final List<Rect> taken = new ArrayList<>();
  private final List<Rect> barred = new ArrayList<>();
  private final List<Line2D> avoided = new ArrayList<>();
  private final List<PlacedLabel> placed = new ArrayList<>();

  /** Measures the words of a label: width and height [pixels]. */
  interface Measure {
    double[] size(Label label);
  }

  /**
   * @param view the room there is, its upper left corner the zero point
   * @param unit what a pixel of the default page is here [pixels]
   */
  LabelPlacer(Rect view, Occupancy occupancy, double unit) {
    this.view = view;
    this.occupancy = occupancy;
    this.unit = unit;
  }

  /** Keeps a rectangle free of labels. */
  void keepFree(Rect rect) {
    taken.add(rect);
  }

  /** Keeps a rectangle free of words; lines to them may cross it. */
  void keepFreeOfWords(Rect rect) {
    barred.add(rect);
  }

  /** Keeps labels off a line as far as can be. */
  void avoid(Line2D line) {
    avoided.add(line);
  }

  /** Places a label, with fewer words if need be; empty when there is no room at all. */
  Optional<PlacedLabel> place(Label label, Measure measure) {
    return place(label, measure, false);
  }

  /**
   * Places a label, with fewer words if need be; empty when there is no room.
   *
   * @param elsewhere whether it may stand in another view, and here only if it stands well
   */
  Optional<PlacedLabel> place(Label label, Measure measure, boolean elsewhere) {
    double most = elsewhere ? MOST_IF_ELSEWHERE : Double.POSITIVE_INFINITY;
    most = label.quiet() ? MOST_FOR_QUIET : most;
    Found found = cheapest(label, measure, most);
    if (label.words().size() > 1 && found.cost() > SHORTENING_COST) {
      Found shorter = cheapest(label.firstLineOnly(), measure, most);
      found = shorter.cost() + SHORTENING_COST < found.cost() ? shorter : found;
    }
    Optional<PlacedLabel> best = Optional.ofNullable(found.place());
    best.ifPresent(
        place -> {
          placed.add(place);
          taken.add(place.box().grown(6 * unit));
        });
    return best;
  }

  /** The best place there is, null for none, and what it costs. */
  private record Found(PlacedLabel place, double cost) {}

  private Found cheapest(Label label, Measure measure, double most) {
    double[] size = measure.size(label);
    PlacedLabel best = null;
    double least = most;
    for (int p = 0; p < label.places().size(); p++) {
      double x = label.places().get(p)[0];
      double y = label.places().get(p)[1];
      for (double reach : REACHES) {
        for (int d = 0; d < DIRECTIONS; d++) {
          Rect box =
              box(
                  ahead(label.places().get(p), label.clearance() + reach * unit, d),
                  angle(d),
                  size);
          PlacedLabel candidate = new PlacedLabel(label, box, x, y);
          double cost = cost(candidate, least - p * OTHER_PLACE_COST) + p * OTHER_PLACE_COST;
          if (cost < least) {
            least = cost;
            best = candidate;
          }
        }
      }
    }
    return new Found(best, best == null ? Double.POSITIVE_INFINITY : least);
  }

  private static double angle(int d) {
    return 2 * Math.PI * d / DIRECTIONS;
  }

  /** The point at a distance from a place, in one of the directions. */
  private static double[] ahead(double[] place, double distance, int d) {
    return new double[] {
      place[0] + distance * Math.cos(angle(d)), place[1] - distance * Math.sin(angle(d))
    };
  }

  /** The box that begins at a point and lies on in a direction. */
  private static Rect box(double[] near, double angle, double[] size) {
    double across = (1 - Math.cos(angle)) / 2;
    double down = (1 + Math.sin(angle)) / 2;
    return new Rect(near[0] - across * size[0], near[1] - down * size[1], size[0], size[1]);
  }

  private double cost(PlacedLabel candidate, double least) {
    Rect box = candidate.box();
    if (!view.contains(box)
        || taken.stream().anyMatch(box::overlaps)
        || barred.stream().anyMatch(box::overlaps)) {
      return Double.POSITIVE_INFINITY;
    }
    double[] meets = candidate.meets();
    double length = Math.hypot(meets[0] - candidate.x(), meets[1] - candidate.y());
    double cost =
        length / unit
            + Math.max(0, length / unit - LONG)
            + WOOD_COST * Math.sqrt(occupancy.share(box));
    cost += occupancy.share(box.grown(6 * unit)) > 0 ? TOUCH_COST : 0;
    if (cost >= least) {
      return cost;
    }
    Occupancy.Met met =
        occupancy.met(new Line2D.Double(candidate.x(), candidate.y(), meets[0], meets[1]), unit);
    cost += LEADER_WOOD_COST * met.crossings();
    cost += LEADER_COVER_COST * Math.max(0, met.covered() / unit - LEADER_START);
    cost += CROSSING_COST * placed.stream().filter(candidate::crosses).count();
    cost += CROSSING_COST * taken.stream().filter(candidate::runsThrough).count();
    cost += CROSSING_COST * placed.stream().filter(other -> other.runsThrough(box)).count();
    Rect clear = box.grown(LINE_CLEARANCE * unit);
    for (Line2D line : avoided) {
      cost +=
          line.intersects(clear.x(), clear.y(), clear.width(), clear.height()) ? CROSSING_COST : 0;
      boolean crossed =
          length > 1
              && line.intersectsLine(candidate.x(), candidate.y(), meets[0], meets[1])
              && line.ptSegDist(candidate.x(), candidate.y()) > 1;
      cost += crossed ? LEADER_WOOD_COST : 0;
    }
    return cost;
  }
}
