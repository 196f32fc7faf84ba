// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeJson.number;
import static boughwright.modeller.file.TreeJson.point;
import static boughwright.modeller.file.TreeJson.put;
import static boughwright.modeller.file.TreeJson.word;

import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Slot;
import java.util.LinkedHashMap;
import java.util.Map;

/** Turns a segment into plain values to be written; what is not so is left out. */
final class SegmentJson {
  private SegmentJson() {}

  static Map<String, Object> segment(Segment segment) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", segment.id());
    fields.put("parent", segment.parent().orElse(null));
    fields.put("kind", word(segment.kind()));
    if (segment.along() != 1) {
      fields.put("along", number(segment.along(), Quantity.FRACTION));
    }
    segment.joins().ifPresent(joins -> fields.put("joins", word(joins)));
    segment.start().ifPresent(start -> fields.put("start_mm", point(start)));
    fields.put("end_mm", point(segment.end()));
    fields.put("caliper_start_mm", number(segment.caliperStart(), Quantity.MILLIMETRES));
    fields.put("caliper_end_mm", number(segment.caliperEnd(), Quantity.MILLIMETRES));
    put(fields, "bark_mm", segment.bark(), Quantity.MILLIMETRES);
    segment.live().ifPresent(live -> fields.put("live", live));
    features(fields, segment.features());
    fields.putAll(segment.extras());
    return fields;
  }

  private static void features(Map<String, Object> fields, Features features) {
    put(fields, "hollow_mm", features.hollow(), Quantity.MILLIMETRES);
    features.deadFace().ifPresent(face -> fields.put("dead_face", deadFace(face)));
    features.slot().ifPresent(slot -> fields.put("slot", slot(slot)));
    features.knots().ifPresent(knots -> fields.put("knots", word(knots)));
    features.grain().ifPresent(grain -> fields.put("grain", word(grain)));
    if (features.includedBark()) {
      fields.put("included_bark", true);
    }
  }

  private static Map<String, Object> deadFace(DeadFace face) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("round_deg", number(face.round(), Quantity.DEGREES));
    fields.put("width_deg", number(face.width(), Quantity.DEGREES));
    fields.put("depth_mm", number(face.depth(), Quantity.MILLIMETRES));
    fields.putAll(face.extras());
    return fields;
  }

  private static Map<String, Object> slot(Slot slot) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("round_deg", number(slot.round(), Quantity.DEGREES));
    fields.put("width_mm", number(slot.width(), Quantity.MILLIMETRES));
    fields.put("depth_mm", number(slot.depth(), Quantity.MILLIMETRES));
    fields.putAll(slot.extras());
    return fields;
  }
}
