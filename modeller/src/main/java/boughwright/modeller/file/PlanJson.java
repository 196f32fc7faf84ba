// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
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
    fields.putAll(plan.extras());
    return fields;
  }

  private static void putAll(Map<String, Object> fields, String name, List<?> values) {
    if (!values.isEmpty()) {
      fields.put(name, values);
    }
  }

  private static Map<String, Object> planting(Planting planting) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("tilt_deg", TreeJson.number(planting.tilt(), Quantity.DEGREES));
    fields.put("toward_azimuth_deg", TreeJson.number(planting.towardAzimuth(), Quantity.DEGREES));
    fields.putAll(planting.extras());
    return fields;
  }

  private static Map<String, Object> spot(Spot spot) {
    Map<String, Object> fields = new LinkedHashMap<>();
    putSpot(fields, spot);
    fields.putAll(spot.extras());
    return fields;
  }

  private static void putSpot(Map<String, Object> fields, Spot spot) {
    fields.put("segment", spot.segment());
    fields.put("along", TreeJson.number(spot.along(), Quantity.FRACTION));
  }

  private static Map<String, Object> proposal(Proposal proposal) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", proposal.id());
    proposal.about().ifPresent(about -> fields.put("about", about));
    putAll(fields, "guy_lines", proposal.guyLines().stream().map(PlanJson::guyLine).toList());
    putAll(
        fields, "hung_weights", proposal.hungWeights().stream().map(PlanJson::hungWeight).toList());
    putAll(fields, "coils", proposal.coils().stream().map(PlanJson::coil).toList());
    fields.putAll(proposal.extras());
    return fields;
  }

  private static Map<String, Object> guyLine(GuyLine line) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", line.id());
    putSpot(fields, line.at());
    TreeJson.put(fields, "pad_round_deg", line.padRound(), Quantity.DEGREES);
    if (line.anchor() instanceof Anchor.Fixed fixed) {
      fields.put("anchor_mm", TreeJson.point(fixed.point()));
    } else if (line.anchor() instanceof Anchor.OnTree onTree) {
      fields.put("anchor", spot(onTree.spot()));
    }
    if (line.hold() instanceof Hold.Tension tension) {
      fields.put("tension_N", TreeJson.number(tension.newtons(), Quantity.NEWTONS));
    } else if (line.hold() instanceof Hold.Length length) {
      fields.put("length_mm", TreeJson.number(length.metres(), Quantity.MILLIMETRES));
    } else if (line.hold() instanceof Hold.Shortening shortening) {
      fields.put("shorten_mm", TreeJson.number(shortening.metres(), Quantity.MILLIMETRES));
    }
    fields.putAll(line.extras());
    return fields;
  }

  private static Map<String, Object> hungWeight(HungWeight weight) {
    Map<String, Object> fields = new LinkedHashMap<>();
    putSpot(fields, weight.at());
    fields.put("mass_kg", TreeJson.number(weight.mass(), Quantity.KILOGRAMS));
    fields.putAll(weight.extras());
    return fields;
  }

  private static Map<String, Object> coil(Coil coil) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("from", spot(coil.from()));
    fields.put("to", spot(coil.to()));
    fields.put("metal", coil.metal().word());
    fields.put("gauge_mm", TreeJson.number(coil.gauge(), Quantity.MILLIMETRES));
    fields.put("strands", coil.strands());
    fields.put("angle_to_axis_deg", TreeJson.number(coil.angleToAxis(), Quantity.DEGREES));
    fields.put("hand", TreeJson.word(coil.hand()));
    fields.putAll(coil.extras());
    return fields;
  }
}
