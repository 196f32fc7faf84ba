// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Stands the measured pieces on each other, from the trunk base at the origin outward.
 *
 * <p>Points are rounded to the micrometre, a hundredth of what a tape or caliper reads, so that the
 * file stays legible; each piece starts from the rounded place, so nothing adds up.
 */
final class TreePlacer {
  /** Steps in a metre that points are rounded to, and in 1 that fractions are rounded to. */
  private static final double STEPS = 1e6;

  private final SheetCells cells;
  private final Calipers calipers;
  private final Map<String, Double> lengths = new HashMap<>();
  private final Map<String, Point3> starts = new HashMap<>();
  private final Map<String, Point3> ends = new HashMap<>();
  private final Map<String, Kind> kinds = new HashMap<>();

  TreePlacer(Calipers calipers, SheetCells cells) {
    this.calipers = calipers;
    this.cells = cells;
  }

  /** The segment of a row whose parent was placed before; empty after a fault. */
  Optional<Segment> place(TapeRow row) {
    Optional<Double> along = row.parent().isEmpty() ? Optional.of(1.0) : along(row);
    Point3 start =
        row.parent()
            .map(p -> starts.get(p).toward(ends.get(p), along.orElse(1.0)))
            .orElse(Point3.ORIGIN);
    Point3 end = rounded(start.plus(row.step()));
    lengths.put(row.id(), row.step().norm());
    starts.put(row.id(), start);
    ends.put(row.id(), end);
    kinds.put(row.id(), row.kind());
    return along.map(fraction -> segment(row, fraction, start, end));
  }

  private Segment segment(TapeRow row, double along, Point3 start, Point3 end) {
    return new Segment(
        row.id(),
        row.parent(),
        along,
        row.joins(),
        row.kind(),
        row.parent().isEmpty() ? Optional.of(start) : Optional.empty(),
        end,
        calipers.start(row),
        calipers.end(row),
        row.bark(),
        row.live(),
        row.features(),
        row.note().<Map<String, Object>>map(note -> Map.of("note", note)).orElse(Map.of()));
  }

  private Optional<Double> along(TapeRow row) {
    OptionalDouble distance = row.seat().distance();
    if (distance.isEmpty()) {
      return Optional.of(row.seat().along().orElse(usual(row)));
    }
    String parent = row.parent().orElseThrow();
    double length = lengths.get(parent);
    double along = Math.round(distance.getAsDouble() / length * STEPS) / STEPS;
    if (along <= 1) {
      return Optional.of(along);
    }
    cells.fault(
        row.row(),
        SheetColumn.FROM_PARENT_START,
        "beyond-parent",
        String.format(
            Locale.ROOT,
            "it starts %.1f mm along \"%s\", which is %.1f mm long",
            1000 * distance.getAsDouble(),
            SheetLimits.shown(parent),
            1000 * length),
        "Measure from the start of that piece, or name the next piece as its parent");
    return Optional.empty();
  }

  /** A shoot goes on from the end of its parent; a root leaves the trunk at its foot. */
  private double usual(TapeRow row) {
    boolean leavesTrunk = kinds.get(row.parent().orElseThrow()) != Kind.ROOT;
    return row.kind() == Kind.ROOT && leavesTrunk ? 0 : 1;
  }

  private static Point3 rounded(Point3 point) {
    return new Point3(rounded(point.x()), rounded(point.y()), rounded(point.z()));
  }

  private static double rounded(double value) {
    return Math.round(value * STEPS) / STEPS;
  }
}
