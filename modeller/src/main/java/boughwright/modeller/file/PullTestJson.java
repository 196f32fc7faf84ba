// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeJson.number;

import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.PullTest.Reading;
import java.util.LinkedHashMap;
import java.util.Map;

/** Turns pull tests and the condition of a tree into plain values; defaults are left out. */
final class PullTestJson {
  private PullTestJson() {}

  static Map<String, Object> test(PullTest test) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", test.id());
    fields.put("segment", test.segment());
    fields.put("along", number(test.along(), Quantity.FRACTION));
    fields.put("direction", HoldJson.direction(test.direction()));
    test.doneOn().ifPresent(day -> fields.put("done_on", day.toString()));
    fields.put("readings", test.readings().stream().map(PullTestJson::reading).toList());
    fields.putAll(test.extras());
    return fields;
  }

  private static Map<String, Object> reading(Reading reading) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("force_N", number(reading.force(), Quantity.NEWTONS));
    fields.put("moved_mm", number(reading.moved(), Quantity.MILLIMETRES));
    if (reading.baseMoved() != 0) {
      fields.put("base_moved_mm", number(reading.baseMoved(), Quantity.MILLIMETRES));
    }
    if (reading.forceError() != Reading.USUAL_FORCE_ERROR) {
      fields.put("force_error_pct", number(reading.forceError(), Quantity.PERCENT));
    }
    if (reading.movedError() != Reading.USUAL_MOVED_ERROR) {
      fields.put("moved_error_mm", number(reading.movedError(), Quantity.MILLIMETRES));
    }
    fields.putAll(reading.extras());
    return fields;
  }

  static Map<String, Object> condition(Condition condition) {
    Map<String, Object> fields = new LinkedHashMap<>();
    condition.hemisphere().ifPresent(half -> fields.put("hemisphere", TreeJson.word(half)));
    condition.repottedOn().ifPresent(day -> fields.put("repotted_on", day.toString()));
    condition.collectedOn().ifPresent(day -> fields.put("collected_on", day.toString()));
    condition.workedOn().ifPresent(day -> fields.put("worked_on", day.toString()));
    fields.putAll(condition.extras());
    return fields;
  }
}
