// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Grain;
import boughwright.modeller.tree.Knots;
import boughwright.modeller.tree.Slot;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a person ticks on a segment because it makes the wood weaker. */
final class FeaturesReader {
  private FeaturesReader() {}

  static Features features(ObjectReader segment) {
    OptionalDouble hollow =
        segment.numbers().optional("hollow_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    Optional<DeadFace> deadFace = inside(segment, "dead_face").flatMap(FeaturesReader::deadFace);
    Optional<Slot> slot = inside(segment, "slot").flatMap(FeaturesReader::slot);
    Optional<Knots> knots = segment.choice("knots", Knots.class);
    Optional<Grain> grain = segment.choice("grain", Grain.class);
    boolean includedBark = segment.flag("included_bark").orElse(false);
    return new Features(hollow, deadFace, slot, knots, grain, includedBark);
  }

  private static Optional<ObjectReader> inside(ObjectReader segment, String field) {
    return segment.object(field, segment.subject() + " " + field);
  }

  private static Optional<DeadFace> deadFace(ObjectReader object) {
    NumberReader numbers = object.numbers();
    double round = numbers.required("round_deg", Quantity.DEGREES, Range.ANY);
    double width = numbers.required("width_deg", Quantity.DEGREES, Range.UP_TO_A_TURN);
    double depth = numbers.required("depth_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(new DeadFace(round, width, depth, extras))
        : Optional.empty();
  }

  private static Optional<Slot> slot(ObjectReader object) {
    NumberReader numbers = object.numbers();
    double round = numbers.required("round_deg", Quantity.DEGREES, Range.ANY);
    double width = numbers.required("width_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double depth = numbers.required("depth_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    Map<String, Object> extras = object.extras();
    return object.sound() ? Optional.of(new Slot(round, width, depth, extras)) : Optional.empty();
  }
}
