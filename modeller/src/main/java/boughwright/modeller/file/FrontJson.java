// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeJson.number;

import boughwright.modeller.plan.FrontChoice;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.MarkedFront;
import java.util.LinkedHashMap;
import java.util.Map;

/** Turns what a person said about fronts into plain values; what is not said is left out. */
final class FrontJson {
  private FrontJson() {}

  static void put(Map<String, Object> top, FrontChoice choice) {
    if (!choice.equals(FrontChoice.UNSAID)) {
      top.put("fronts", fronts(choice));
    }
  }

  private static Map<String, Object> fronts(FrontChoice choice) {
    FrontWishes wishes = choice.wishes();
    Map<String, Object> fields = new LinkedHashMap<>();
    wishes.style().ifPresent(style -> fields.put("style", TreeJson.word(style)));
    TreeJson.put(fields, "eye_mm", wishes.eyeHeight(), Quantity.MILLIMETRES);
    TreeJson.put(fields, "eye_distance_mm", wishes.eyeDistance(), Quantity.MILLIMETRES);
    if (!wishes.weights().isEmpty()) {
      Map<String, Object> weights = new LinkedHashMap<>();
      wishes
          .weights()
          .forEach(
              (measure, weight) ->
                  weights.put(TreeJson.word(measure), number(weight, Quantity.FRACTION)));
      fields.put("weights", weights);
    }
    if (!choice.marked().isEmpty()) {
      fields.put("marked", choice.marked().stream().map(FrontJson::marked).toList());
    }
    fields.putAll(wishes.extras());
    return fields;
  }

  private static Map<String, Object> marked(MarkedFront front) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", front.id());
    fields.put("front_azimuth_deg", number(front.azimuth(), Quantity.DEGREES));
    front.planting().ifPresent(planting -> fields.put("planting", PlanJson.planting(planting)));
    front.note().ifPresent(note -> fields.put("note", note));
    fields.putAll(front.extras());
    return fields;
  }
}
