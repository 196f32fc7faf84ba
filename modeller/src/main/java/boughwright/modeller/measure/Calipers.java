// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.Place;
import boughwright.modeller.tree.Joint;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Completes calipers: where a shoot goes on, the caliper at the node counts for both pieces, so it
 * may stand in either row. A caliper that stands in neither is unknown, which is a fault.
 */
final class Calipers {
  private static final int NAMED = 6;

  private final SheetCells cells;
  private final Map<String, TapeRow> rows;
  private final Map<String, TapeRow> next = new HashMap<>();
  private final Map<String, OptionalDouble> starts = new HashMap<>();
  private final Map<String, OptionalDouble> ends = new HashMap<>();

  /** Rows that could not be read, and their parents: their calipers may stand where none looks. */
  private final Set<String> unsure = new HashSet<>();

  private final List<String> borrowed = new ArrayList<>();

  /**
   * Completes the calipers of some rows; what is missing is then among the sheet's problems.
   *
   * @param rows the rows that could be read, by name
   * @param claims all rows
   * @param cells to name cells in faults
   */
  Calipers(Map<String, TapeRow> rows, List<ParentOrder.Claim> claims, SheetCells cells) {
    this.rows = rows;
    this.cells = cells;
    for (ParentOrder.Claim claim : claims) {
      if (!rows.containsKey(claim.id())) {
        unsure.add(claim.id());
        claim.parent().ifPresent(unsure::add);
      }
    }
    for (TapeRow row : rows.values()) {
      row.parent().map(rows::get).filter(p -> goesOn(p, row)).ifPresent(p -> putNext(p, row));
    }
    for (TapeRow row : rows.values()) {
      completeStart(row);
      completeEnd(row);
    }
  }

  private void putNext(TapeRow parent, TapeRow row) {
    next.putIfAbsent(parent.id(), row);
  }

  private static boolean goesOn(TapeRow parent, TapeRow row) {
    return row.seat().isEnd()
        && row.joins().map(Joint.CONTINUES::equals).orElse(row.kind() == parent.kind());
  }

  private void completeStart(TapeRow row) {
    Optional<TapeRow> parent = row.parent().map(rows::get).filter(p -> next.get(p.id()) == row);
    OptionalDouble other = parent.map(TapeRow::caliperEnd).orElse(OptionalDouble.empty());
    starts.put(row.id(), complete(row, SheetColumn.CALIPER_START, row.caliperStart(), other));
  }

  private void completeEnd(TapeRow row) {
    Optional<TapeRow> child = Optional.ofNullable(next.get(row.id()));
    OptionalDouble other = child.map(TapeRow::caliperStart).orElse(OptionalDouble.empty());
    ends.put(row.id(), complete(row, SheetColumn.CALIPER_END, row.caliperEnd(), other));
  }

  private OptionalDouble complete(
      TapeRow row, SheetColumn column, OptionalDouble own, OptionalDouble other) {
    if (own.isPresent() || cells.text(row.row(), column).isPresent()) {
      return own;
    }
    if (other.isPresent()) {
      borrowed.add(row.id());
      return other;
    }
    if (!unsure.contains(row.id()) && !row.parent().map(unsure::contains).orElse(false)) {
      cells.fault(
          row.row(),
          column,
          "no-caliper",
          "there is no caliper, and no piece that goes on from here has one",
          "Measure it; what was not measured is not taken for zero");
    }
    return own;
  }

  /** Caliper at the start [m]; the sheet has no fault. */
  double start(TapeRow row) {
    return starts.get(row.id()).orElseThrow();
  }

  /** Caliper at the end [m]; the sheet has no fault. */
  double end(TapeRow row) {
    return ends.get(row.id()).orElseThrow();
  }

  /** Says once which calipers were taken from the neighbouring row. */
  void sayBorrowed(SheetProblems problems) {
    if (borrowed.isEmpty()) {
      return;
    }
    String names =
        borrowed.stream().distinct().limit(NAMED).collect(Collectors.joining(", "))
            + (borrowed.size() > NAMED ? ", ..." : "");
    problems.warn(
        Place.of(problems.source()),
        "caliper-from-neighbour",
        borrowed.size()
            + " empty calipers are taken from the piece the shoot goes on from or to: "
            + names,
        "Measure both sides of a node where the caliper jumps");
  }
}
