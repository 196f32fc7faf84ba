// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeJson.number;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Strand;
import boughwright.modeller.plan.Tackle;
import boughwright.modeller.plan.Tightener;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns what bends and holds a branch into plain values; defaults are left out. */
final class HoldJson {
  private HoldJson() {}

  static Map<String, Object> guyLine(GuyLine line) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", line.id());
    PlanJson.putSpot(fields, line.at());
    TreeJson.put(fields, "pad_round_deg", line.padRound(), Quantity.DEGREES);
    if (line.anchor() instanceof Anchor.Fixed fixed) {
      fields.put("anchor_mm", TreeJson.point(fixed.point()));
    } else if (line.anchor() instanceof Anchor.OnTree onTree) {
      fields.put("anchor", PlanJson.spot(onTree.spot()));
    }
    if (line.hold() instanceof Hold.Tension tension) {
      fields.put("tension_N", number(tension.newtons(), Quantity.NEWTONS));
    } else if (line.hold() instanceof Hold.Length length) {
      fields.put("length_mm", number(length.metres(), Quantity.MILLIMETRES));
    } else if (line.hold() instanceof Hold.Shortening shortening) {
      fields.put("shorten_mm", number(shortening.metres(), Quantity.MILLIMETRES));
    }
    putTackle(fields, line.tackle());
    fields.putAll(line.extras());
    return fields;
  }

  private static void putTackle(Map<String, Object> fields, Tackle tackle) {
    tackle.strand().ifPresent(strand -> fields.put("strand", strand(strand)));
    tackle.tightener().ifPresent(tightener -> fields.put("tightener", tightener(tightener)));
    TreeJson.put(fields, "pad_length_mm", tackle.padLength(), Quantity.MILLIMETRES);
    if (tackle.lever() > 0) {
      fields.put("lever_mm", number(tackle.lever(), Quantity.MILLIMETRES));
    }
    tackle.anchorKind().ifPresent(kind -> fields.put("anchor_kind", TreeJson.word(kind)));
  }

  private static Map<String, Object> strand(Strand strand) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("material", strand.material().word());
    fields.put("gauge_mm", number(strand.gauge(), Quantity.MILLIMETRES));
    if (strand.count() != 1) {
      fields.put("count", strand.count());
    }
    fields.putAll(strand.extras());
    return fields;
  }

  private static Map<String, Object> tightener(Tightener tightener) {
    Map<String, Object> fields = new LinkedHashMap<>();
    if (tightener instanceof Tightener.Twist twist) {
      fields.put("kind", twist.inMiddle() ? "twist-in-middle" : "twist-at-end");
    } else if (tightener instanceof Tightener.Turnbuckle buckle) {
      fields.put("kind", "turnbuckle");
      fields.put("mm_per_turn", number(buckle.perTurn(), Quantity.MILLIMETRES));
    }
    if (tightener.turnsIn() > 0) {
      fields.put("turns_in", number(tightener.turnsIn(), Quantity.FRACTION));
    }
    fields.putAll(tightener.extras());
    return fields;
  }

  static Map<String, Object> hungWeight(HungWeight weight) {
    Map<String, Object> fields = new LinkedHashMap<>();
    PlanJson.putSpot(fields, weight.at());
    fields.put("mass_kg", number(weight.mass(), Quantity.KILOGRAMS));
    fields.putAll(weight.extras());
    return fields;
  }

  static Map<String, Object> coil(Coil coil) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("from", PlanJson.spot(coil.from()));
    fields.put("to", PlanJson.spot(coil.to()));
    fields.put("metal", coil.metal().word());
    fields.put("gauge_mm", number(coil.gauge(), Quantity.MILLIMETRES));
    fields.put("strands", coil.strands());
    fields.put("angle_to_axis_deg", number(coil.angleToAxis(), Quantity.DEGREES));
    fields.put("hand", TreeJson.word(coil.hand()));
    fields.putAll(coil.extras());
    return fields;
  }

  static Map<String, Object> handBend(HandBend bend) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", bend.id());
    PlanJson.putSpot(fields, bend.at());
    fields.put("direction", direction(bend.direction()));
    fields.put("move_mm", number(bend.move(), Quantity.MILLIMETRES));
    fields.putAll(bend.extras());
    return fields;
  }

  /** A direction as [x, y, z] of length 1. */
  static List<BigDecimal> direction(Direction3 direction) {
    return List.of(
        number(direction.x(), Quantity.FRACTION),
        number(direction.y(), Quantity.FRACTION),
        number(direction.z(), Quantity.FRACTION));
  }

  static Map<String, Object> aid(Aid aid) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("kind", MeansReader.word(aid.kind()));
    fields.put("segment", aid.segment());
    fields.put("from", number(aid.from(), Quantity.FRACTION));
    fields.put("to", number(aid.to(), Quantity.FRACTION));
    TreeJson.put(fields, "round_deg", aid.round(), Quantity.DEGREES);
    TreeJson.put(fields, "width_mm", aid.width(), Quantity.MILLIMETRES);
    TreeJson.put(fields, "depth_mm", aid.depth(), Quantity.MILLIMETRES);
    if (aid.count() != 1) {
      fields.put("count", aid.count());
    }
    fields.putAll(aid.extras());
    return fields;
  }
}
