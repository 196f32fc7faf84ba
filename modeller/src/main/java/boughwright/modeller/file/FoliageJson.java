// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeJson.number;

import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.Pad;
import java.util.LinkedHashMap;
import java.util.Map;

/** Turns what a tree wears in leaf into plain values; defaults are left out. */
final class FoliageJson {
  private FoliageJson() {}

  static void put(Map<String, Object> top, Foliage foliage) {
    if (foliage.equals(Foliage.UNSAID)) {
      return;
    }
    Map<String, Object> fields = new LinkedHashMap<>();
    foliage.leaves().ifPresent(leaves -> fields.put("leaves", TreeJson.word(leaves)));
    if (!foliage.pads().isEmpty()) {
      fields.put("pads", foliage.pads().stream().map(FoliageJson::pad).toList());
    }
    fields.putAll(foliage.extras());
    top.put("foliage", fields);
  }

  private static Map<String, Object> pad(Pad pad) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", pad.id());
    fields.put("segment", pad.segment());
    fields.put("along", number(pad.along(), Quantity.FRACTION));
    fields.put("length_mm", number(pad.length(), Quantity.MILLIMETRES));
    fields.put("width_mm", number(pad.width(), Quantity.MILLIMETRES));
    fields.put("thickness_mm", number(pad.thickness(), Quantity.MILLIMETRES));
    if (pad.raised() != 0) {
      fields.put("raised_mm", number(pad.raised(), Quantity.MILLIMETRES));
    }
    fields.putAll(pad.extras());
    return fields;
  }
}
