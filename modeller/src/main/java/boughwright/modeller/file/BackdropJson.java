// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeJson.number;

import boughwright.modeller.tree.Backdrop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns the photos to trace over into plain values. */
final class BackdropJson {
  private BackdropJson() {}

  static void put(Map<String, Object> top, List<Backdrop> backdrops) {
    if (!backdrops.isEmpty()) {
      top.put("backdrops", backdrops.stream().map(BackdropJson::backdrop).toList());
    }
  }

  private static Map<String, Object> backdrop(Backdrop backdrop) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("photo", backdrop.photo());
    fields.put("seen_from_azimuth_deg", number(backdrop.seenFrom(), Quantity.DEGREES));
    TreeJson.put(fields, "mm_per_px", backdrop.metresPerPixel(), Quantity.MILLIMETRES);
    fields.put(
        "base_px",
        List.of(
            number(backdrop.baseX(), Quantity.FRACTION),
            number(backdrop.baseY(), Quantity.FRACTION)));
    fields.put("shown", number(backdrop.shown(), Quantity.FRACTION));
    fields.putAll(backdrop.extras());
    return fields;
  }
}
