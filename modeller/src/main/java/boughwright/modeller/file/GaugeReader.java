// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.plan.Gauges;
import boughwright.modeller.plan.Material;
import boughwright.modeller.problem.Amount;
import java.util.Optional;

/**
 * Reads how thick a wire is: in millimetres, or by its number in the American wire gauge. It is
 * kept in metres and written back in millimetres.
 */
final class GaugeReader {
  private static final String SIZE = "gauge_mm";
  private static final String NUMBER = "gauge_awg";

  private GaugeReader() {}

  /**
   * The diameter of a wire, from exactly one of its two fields; NaN after a fault [m].
   *
   * @param material what it is made of, to tell whether it is sold so thick; empty if nobody knows
   */
  static double gauge(ObjectReader object, Optional<Material> material) {
    boolean bySize = object.has(SIZE);
    boolean byNumber = object.has(NUMBER);
    double size =
        object.numbers().optional(SIZE, Quantity.MILLIMETRES, Range.POSITIVE).orElse(Double.NaN);
    double numbered = byNumber ? fromNumber(object) : Double.NaN;
    if (bySize == byNumber) {
      object.fault(
          bySize ? NUMBER : SIZE,
          bySize ? "two-gauges" : "missing-field",
          bySize ? SIZE + " and " + NUMBER + " are given together" : SIZE + " is missing",
          "Measure the wire and give " + SIZE + ", or " + NUMBER + " for its number, not both");
      return Double.NaN;
    }
    double gauge = bySize ? size : numbered;
    if (gauge > 0 && material.isPresent()) {
      sold(object, bySize ? SIZE : NUMBER, material.get(), gauge);
    }
    return gauge;
  }

  private static double fromNumber(ObjectReader object) {
    int faults = object.problems().faults();
    int number = object.numbers().count(NUMBER, Gauges.THICKEST_AWG, Gauges.THINNEST_AWG, 0);
    return object.problems().faults() == faults ? Gauges.fromAwg(number) : Double.NaN;
  }

  private static void sold(ObjectReader object, String field, Material material, double gauge) {
    String found = material.word() + " of " + Amount.millimetres(gauge) + " is not sold";
    String nearest = "The nearest sold is " + Amount.millimetres(Gauges.nearest(material, gauge));
    if (Gauges.isFarFromSold(material, gauge)) {
      object.fault(field, "no-such-gauge", found, nearest + "; use that, or more strands of it");
    } else if (!Gauges.isSold(material, gauge)) {
      object.warn(field, "odd-gauge", found + " (common practice, no source)", nearest);
    }
  }
}
