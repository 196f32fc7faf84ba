// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import static boughwright.modeller.measure.SheetColumn.ALONG;
import static boughwright.modeller.measure.SheetColumn.AZIMUTH;
import static boughwright.modeller.measure.SheetColumn.BARK;
import static boughwright.modeller.measure.SheetColumn.CALIPER_END;
import static boughwright.modeller.measure.SheetColumn.CALIPER_START;
import static boughwright.modeller.measure.SheetColumn.ELEVATION;
import static boughwright.modeller.measure.SheetColumn.FROM_PARENT_START;
import static boughwright.modeller.measure.SheetColumn.KIND;
import static boughwright.modeller.measure.SheetColumn.PARENT;
import static boughwright.modeller.measure.SheetColumn.SEGMENT;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Grain;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Knots;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads the rows of a tape sheet, one at a time. */
final class TapeRows {
  private static final double VERTICAL_DEG = 90;
  private static final double TURN_DEG = 360;
  private static final Map<String, Kind> KINDS = words(Kind.values());
  private static final Map<String, Joint> JOINTS =
      Map.of("continues", Joint.CONTINUES, "union", Joint.UNION);
  private static final Map<String, Knots> KNOTS = words(Knots.values());
  private static final Map<String, Grain> GRAINS = words(Grain.values());
  private static final Map<String, Boolean> ANSWERS =
      Map.of("yes", true, "true", true, "no", false, "false", false);

  private final SheetCells cells;

  TapeRows(SheetCells cells) {
    this.cells = cells;
  }

  /** The constants of an enum by their names in small letters. */
  private static <E extends Enum<E>> Map<String, E> words(E[] constants) {
    return Arrays.stream(constants)
        .collect(Collectors.toMap(e -> e.name().toLowerCase(Locale.ROOT), Function.identity()));
  }

  /** The row as measured; empty after a fault, which is then among the sheet's problems. */
  Optional<TapeRow> read(SheetRow row) {
    Optional<String> id = cells.required(row, SEGMENT);
    Optional<String> parent = cells.text(row, PARENT);
    cells.required(row, KIND);
    Optional<Kind> kind = cells.choice(row, KIND, KINDS);
    Optional<Vector3> step = step(row);
    Optional<TapeRow.Seat> seat = seat(row, parent);
    OptionalDouble start = caliper(row, CALIPER_START);
    OptionalDouble end = caliper(row, CALIPER_END);
    Optional<Joint> joins = cells.choice(row, SheetColumn.JOINS, JOINTS);
    OptionalDouble bark = bark(row, Math.min(start.orElse(end.orElse(1)), end.orElse(1)));
    Optional<Boolean> live = cells.choice(row, SheetColumn.LIVE, ANSWERS);
    Features features = features(row);
    Optional<String> note = cells.text(row, SheetColumn.NOTE);
    if (id.isEmpty() || kind.isEmpty() || step.isEmpty() || seat.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new TapeRow(
            row,
            id.get(),
            parent,
            kind.get(),
            step.get(),
            seat.get(),
            start,
            end,
            joins,
            bark,
            live,
            features,
            note));
  }

  private Features features(SheetRow row) {
    return new Features(
        cells.length(row, SheetColumn.HOLLOW, SheetLimits.LEAST_CALIPER, SheetLimits.MOST_CALIPER),
        Optional.empty(),
        Optional.empty(),
        cells.choice(row, SheetColumn.KNOTS, KNOTS),
        cells.choice(row, SheetColumn.GRAIN, GRAINS),
        cells.choice(row, SheetColumn.INCLUDED_BARK, ANSWERS).orElse(false));
  }

  /** From start to end; an upright piece needs no azimuth. */
  private Optional<Vector3> step(SheetRow row) {
    OptionalDouble elevation = cells.angle(row, ELEVATION, VERTICAL_DEG);
    OptionalDouble azimuth = cells.angle(row, AZIMUTH, TURN_DEG);
    OptionalDouble length =
        cells.length(row, SheetColumn.LENGTH, SheetLimits.LEAST_LENGTH, SheetLimits.MOST_LENGTH);
    cells.required(row, ELEVATION);
    cells.required(row, SheetColumn.LENGTH);
    boolean upright =
        elevation.isPresent()
            && Math.abs(elevation.getAsDouble()) == Math.toRadians(VERTICAL_DEG)
            && cells.text(row, AZIMUTH).isEmpty();
    if (!upright) {
      cells.required(row, AZIMUTH);
    }
    if (elevation.isEmpty() || length.isEmpty() || azimuth.isEmpty() && !upright) {
      return Optional.empty();
    }
    return Optional.of(
        Direction3.ofAzimuth(azimuth.orElse(0), elevation.getAsDouble())
            .times(length.getAsDouble()));
  }

  private Optional<TapeRow.Seat> seat(SheetRow row, Optional<String> parent) {
    boolean fraction = cells.text(row, ALONG).isPresent();
    boolean distance = cells.text(row, FROM_PARENT_START).isPresent();
    OptionalDouble along = cells.fraction(row, ALONG);
    OptionalDouble metres = cells.length(row, FROM_PARENT_START, 0, SheetLimits.MOST_LENGTH);
    if (fraction && distance) {
      cells.fault(
          row,
          FROM_PARENT_START,
          "two-places",
          "the place on the parent is given twice",
          "Keep the fraction or the distance, not both");
      return Optional.empty();
    }
    if (parent.isEmpty() && (fraction || distance)) {
      cells.fault(
          row,
          fraction ? ALONG : FROM_PARENT_START,
          "no-parent",
          "a place on the parent is given, but no parent",
          "Name the parent, or empty this cell of the trunk base");
      return Optional.empty();
    }
    boolean unread = fraction && along.isEmpty() || distance && metres.isEmpty();
    return unread ? Optional.empty() : Optional.of(new TapeRow.Seat(along, metres));
  }

  private OptionalDouble caliper(SheetRow row, SheetColumn column) {
    return cells.length(row, column, SheetLimits.LEAST_CALIPER, SheetLimits.MOST_CALIPER);
  }

  private OptionalDouble bark(SheetRow row, double thinnest) {
    OptionalDouble bark = cells.length(row, BARK, 0, SheetLimits.MOST_CALIPER);
    if (bark.isPresent() && 2 * bark.getAsDouble() >= thinnest) {
      cells.fault(
          row,
          BARK,
          "no-wood",
          "two layers of this bark are as thick as the thinner caliper, no wood is left",
          "Write the thickness of one layer");
    }
    return bark;
  }
}
