// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Spot;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads one coiled wire. */
final class CoilReader {
  private static final int MOST_STRANDS = 100;

  private static final List<Material> METALS =
      List.of(Material.values()).stream().filter(Material::isWire).toList();

  private CoilReader() {}

  static Optional<Coil> coil(ObjectReader object) {
    Optional<Spot> from = end(object, "from");
    Optional<Spot> to = end(object, "to");
    Optional<Material> metal = object.oneOfRequired("metal", METALS, Material::word);
    double gauge = GaugeReader.gauge(object, metal);
    if (!object.has("strands")) {
      object.missing("strands", "Count the wires that lie side by side");
    }
    int strands = object.numbers().count("strands", 1, MOST_STRANDS, 1);
    double angle = angle(object);
    Optional<Hand> hand =
        object.oneOfRequired(
            "hand", List.of(Hand.values()), one -> one.name().toLowerCase(Locale.ROOT));
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(
            new Coil(
                from.orElseThrow(),
                to.orElseThrow(),
                metal.orElseThrow(),
                gauge,
                strands,
                angle,
                hand.orElseThrow(),
                extras))
        : Optional.empty();
  }

  private static double angle(ObjectReader object) {
    double angle = object.numbers().required("angle_to_axis_deg", Quantity.DEGREES, Range.POSITIVE);
    if (angle >= Math.PI / 2) {
      object.fault(
          "angle_to_axis_deg",
          "out-of-range",
          "angle_to_axis_deg is 90 or more",
          "Give the angle between wire and branch, mostly 45 to 60");
    }
    return angle;
  }

  private static Optional<Spot> end(ObjectReader object, String field) {
    if (!object.has(field)) {
      object.missing(field, "Give the segment and along where the wire starts and ends");
    }
    return object.object(field, object.subject() + " " + field).flatMap(PlanReader::spot);
  }
}
