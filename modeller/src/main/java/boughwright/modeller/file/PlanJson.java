// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Stage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes plans as fields of a tree file; defaults are left out. */
final class PlanJson {
  private PlanJson() {}

  static Map<String, Object> plan(Plan plan) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", plan.id());
    TreeJson.put(fields, "front_azimuth_deg", plan.frontAzimuth(), Quantity.DEGREES);
    plan.planting().ifPresent(planting -> fields.put("planting", planting(planting)));
    if (plan.stance() != Plan.Stance.AS_MEASURED) {
      fields.put("stance", TreeJson.word(plan.stance()));
    }
    if (plan.selfWeight()) {
      fields.put("self_weight", true);
    }
    plan.clamp().ifPresent(clamp -> fields.put("clamp", spot(clamp)));
    putAll(fields, "cuts", plan.cuts().stream().map(PlanJson::spot).toList());
    plan.apex().ifPresent(apex -> fields.put("apex", apex));
    putAll(fields, "proposals", plan.proposals().stream().map(PlanJson::proposal).toList());
    putAll(fields, "stages", plan.schedule().stages().stream().map(PlanJson::stage).toList());
    TreeJson.put(fields, "release_after_days", plan.schedule().release(), Quantity.DAYS);
    fields.putAll(plan.extras());
    return fields;
  }

  private static Map<String, Object> stage(Stage stage) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("after_days", TreeJson.number(stage.after(), Quantity.DAYS));
    fields.put("part", TreeJson.number(stage.part(), Quantity.FRACTION));
    fields.putAll(stage.extras());
    return fields;
  }

  private static void putAll(Map<String, Object> fields, String name, List<?> values) {
    if (!values.isEmpty()) {
      fields.put(name, values);
    }
  }

  static Map<String, Object> planting(Planting planting) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("tilt_deg", TreeJson.number(planting.tilt(), Quantity.DEGREES));
    fields.put("toward_azimuth_deg", TreeJson.number(planting.towardAzimuth(), Quantity.DEGREES));
    fields.putAll(planting.extras());
    return fields;
  }

  static Map<String, Object> spot(Spot spot) {
    Map<String, Object> fields = new LinkedHashMap<>();
    putSpot(fields, spot);
    fields.putAll(spot.extras());
    return fields;
  }

  static void putSpot(Map<String, Object> fields, Spot spot) {
    fields.put("segment", spot.segment());
    fields.put("along", TreeJson.number(spot.along(), Quantity.FRACTION));
  }

  private static Map<String, Object> proposal(Proposal proposal) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", proposal.id());
    proposal.about().ifPresent(about -> fields.put("about", about));
    putAll(fields, "guy_lines", proposal.guyLines().stream().map(HoldJson::guyLine).toList());
    putAll(
        fields, "hung_weights", proposal.hungWeights().stream().map(HoldJson::hungWeight).toList());
    putAll(fields, "coils", proposal.coils().stream().map(HoldJson::coil).toList());
    putAll(fields, "hand_bends", proposal.handBends().stream().map(HoldJson::handBend).toList());
    putAll(fields, "aids", proposal.aids().stream().map(HoldJson::aid).toList());
    fields.putAll(proposal.extras());
    return fields;
  }
}
