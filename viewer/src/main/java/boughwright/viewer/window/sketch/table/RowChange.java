// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.modeller.edit.BranchEdits;
import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.Run;
import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.sketch.entry.Polar;
import boughwright.viewer.window.sketch.entry.Typed;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * New texts for cells of one row; read where the row is changed, so that what another cell changed
 * before counts.
 *
 * @param id the segment
 * @param cells texts by column, only of cells that change
 * @param length unit of lengths that have none beside them
 */
record RowChange(String id, Map<SegmentColumn, String> cells, LengthUnit length) {
  RowChange {
    cells = new LinkedHashMap<>(cells);
  }

  /** The document with the row changed. */
  Document of(Document document) throws InputException {
    Document changed = document;
    changed = course(changed);
    changed = calipers(changed);
    for (SegmentColumn column : cells.keySet()) {
      changed = single(changed, column);
    }
    return has(SegmentColumn.ID) ? edit(changed, rename()) : changed;
  }

  private boolean has(SegmentColumn column) {
    return cells.containsKey(column);
  }

  private Typed typed(SegmentColumn column) {
    return new Typed(id + ", " + column.title().toLowerCase(Locale.ROOT), cells.get(column));
  }

  private static Document edit(Document document, Edit edit) throws InputException {
    return edit.of(document);
  }

  private Edit rename() {
    return SegmentEdits.rename(id, cells.get(SegmentColumn.ID).strip());
  }

  private Document course(Document document) throws InputException {
    if (!has(SegmentColumn.AZIMUTH)
        && !has(SegmentColumn.ELEVATION)
        && !has(SegmentColumn.LENGTH)) {
      return document;
    }
    Skeleton skeleton = new Skeleton(document.tree());
    int i = skeleton.indexOf(id);
    Polar was = SegmentColumn.course(skeleton, i);
    Polar now =
        new Polar(
            has(SegmentColumn.AZIMUTH) ? typed(SegmentColumn.AZIMUTH).azimuth() : was.azimuth(),
            has(SegmentColumn.ELEVATION)
                ? typed(SegmentColumn.ELEVATION).elevation()
                : was.elevation(),
            has(SegmentColumn.LENGTH) ? typed(SegmentColumn.LENGTH).length(length) : was.length());
    return edit(
        document,
        SegmentEdits.moveEnd(id, new Run.To(now.from(skeleton.start(i))), SegmentEdits.Carry.WITH));
  }

  private Document calipers(Document document) throws InputException {
    if (!has(SegmentColumn.CALIPER_START) && !has(SegmentColumn.CALIPER_END)) {
      return document;
    }
    Segment segment = segment(document);
    double start =
        has(SegmentColumn.CALIPER_START)
            ? typed(SegmentColumn.CALIPER_START).length(length)
            : segment.caliperStart();
    double end =
        has(SegmentColumn.CALIPER_END)
            ? typed(SegmentColumn.CALIPER_END).length(length)
            : segment.caliperEnd();
    return edit(document, SegmentEdits.setCalipers(id, start, end));
  }

  private Segment segment(Document document) {
    return document.tree().segments().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Document single(Document document, SegmentColumn column) throws InputException {
    Typed typed = typed(column);
    return switch (column) {
      case KIND -> edit(document, SegmentEdits.setKind(id, typed.oneOf(Kind.values())));
      case LIVE -> edit(document, SegmentEdits.setLive(id, typed.yesNo()));
      case JOINS -> edit(document, SegmentEdits.setJoint(id, joint(typed)));
      case BARK ->
          edit(
              document,
              SegmentEdits.setBark(
                  id,
                  typed.text().isBlank()
                      ? OptionalDouble.empty()
                      : OptionalDouble.of(typed.thickness(length))));
      case PARENT, ALONG -> place(document);
      default -> document;
    };
  }

  private Document place(Document document) throws InputException {
    Segment segment = segment(document);
    if (segment.parent().isEmpty()) {
      throw typed(has(SegmentColumn.PARENT) ? SegmentColumn.PARENT : SegmentColumn.ALONG)
          .refusal(
              "base-stays", "it is the trunk base and grows on nothing", "Leave this cell empty");
    }
    String parent =
        has(SegmentColumn.PARENT)
            ? cells.get(SegmentColumn.PARENT).strip()
            : segment.parent().orElseThrow();
    double along = has(SegmentColumn.ALONG) ? typed(SegmentColumn.ALONG).along() : segment.along();
    return edit(document, BranchEdits.move(id, parent, along));
  }

  private static Joint joint(Typed typed) throws InputException {
    String word = typed.text().strip().toLowerCase(Locale.ROOT);
    if (!word.isEmpty() && ("goes on".startsWith(word) || "continues".startsWith(word))) {
      return Joint.CONTINUES;
    }
    if (!word.isEmpty() && ("branch".startsWith(word) || "union".startsWith(word))) {
      return Joint.UNION;
    }
    throw typed.refusal(
        "unknown-word",
        '"' + typed.text() + "\" says nothing of how it joins",
        "Type goes on or branch");
  }
}
