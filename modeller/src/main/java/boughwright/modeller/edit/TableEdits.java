// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.InputException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Changes of many cells of the table of segments at once: one edit, one step to undo. */
public final class TableEdits {
  private TableEdits() {}

  /** A cell with the segment it is of. */
  private record Placed(SegmentDraft segment, Cell cell) {}

  /**
   * Changes cells. What grows on a segment rides along. The rows are taken in their order; the tree
   * is judged when all are in, so two cells may depend on each other.
   */
  public static Edit setCells(List<Cell.Row> rows) {
    int count = rows.stream().mapToInt(row -> row.cells().size()).sum();
    String name =
        rows.size() == 1
            ? "Change " + rows.get(0).id()
            : "Change " + count + " cells of " + rows.size() + " segments";
    return Draft.edit(name, draft -> set(draft, rows));
  }

  private static void set(Draft draft, List<Cell.Row> rows) throws InputException {
    List<Placed> cells = new ArrayList<>();
    for (Cell.Row row : rows) {
      SegmentDraft segment = draft.get(row.id());
      row.cells().forEach(cell -> cells.add(new Placed(segment, cell)));
    }
    for (Placed one : cells) {
      plain(draft, one.segment(), one.cell());
    }
    for (Placed one : cells) {
      if (one.cell() instanceof Cell.JointOf cell) {
        Adding.join(draft, one.segment(), cell.joint());
      }
    }
    Set<SegmentDraft> shaped = new HashSet<>();
    for (Placed one : cells) {
      if (isShape(one.cell()) && shaped.add(one.segment())) {
        shape(draft, one.segment(), cells);
      }
    }
    rename(draft, cells);
  }

  private static boolean isShape(Cell cell) {
    return cell instanceof Cell.Azimuth
        || cell instanceof Cell.Elevation
        || cell instanceof Cell.Length;
  }

  private static void plain(Draft draft, SegmentDraft segment, Cell cell) throws InputException {
    String subject = segment.subject();
    if (cell instanceof Cell.Parent parent) {
      BranchEdits.move(draft, segment, parent.parent(), segment.along);
    } else if (cell instanceof Cell.Along along) {
      BranchEdits.move(draft, segment, segment.parent.orElse(""), along.along());
    } else if (cell instanceof Cell.KindOf kind) {
      segment.kind = kind.kind();
    } else if (cell instanceof Cell.CaliperStart caliper) {
      segment.caliperStart = Refusal.size(subject, "the start caliper", caliper.metres());
    } else if (cell instanceof Cell.CaliperEnd caliper) {
      segment.caliperEnd = Refusal.size(subject, "the end caliper", caliper.metres());
    } else if (cell instanceof Cell.Bark bark) {
      if (bark.metres().isPresent()) {
        Refusal.sizeOrNone(subject, "the bark", bark.metres().getAsDouble());
      }
      segment.bark = bark.metres();
    } else if (cell instanceof Cell.Live live) {
      segment.live = live.live();
    }
  }

  /**
   * Azimuth, elevation and length of a segment are set together: one may be lost without others.
   */
  private static void shape(Draft draft, SegmentDraft segment, List<Placed> cells)
      throws InputException {
    Point3 start = draft.start(segment);
    Run.Heading heading = Run.Heading.of(start, segment.end);
    for (Placed one : cells) {
      if (one.segment() == segment && one.cell() instanceof Cell.Azimuth azimuth) {
        heading = new Run.Heading(azimuth.radians(), heading.elevation(), heading.length());
      } else if (one.segment() == segment && one.cell() instanceof Cell.Elevation elevation) {
        heading = new Run.Heading(heading.azimuth(), elevation.radians(), heading.length());
      } else if (one.segment() == segment && one.cell() instanceof Cell.Length length) {
        heading = new Run.Heading(heading.azimuth(), heading.elevation(), length.metres());
      }
    }
    SegmentEdits.moveEnd(draft, segment, heading, SegmentEdits.Carry.WITH);
  }

  private static void rename(Draft draft, List<Placed> cells) throws InputException {
    Map<String, String> names = new LinkedHashMap<>();
    for (Placed one : cells) {
      if (one.cell() instanceof Cell.Id name && !name.id().equals(one.segment().id)) {
        names.put(one.segment().id, name.id());
      }
    }
    Renaming.rename(draft, names);
  }
}
