// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Spot;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads what else is done to bend a branch: pulls by hand, and aids. */
final class MeansReader {
  private static final int MOST_CUTS = 100;

  private MeansReader() {}

  static Optional<HandBend> handBend(ObjectReader object, Set<String> ids) {
    String id = PlanReader.uniqueId(object, ids, "hand bend of this plan");
    String segment = object.id("segment");
    double along = object.numbers().along("along");
    Optional<Direction3> direction = object.numbers().direction("direction");
    if (!object.has("direction")) {
      object.missing("direction", "Give [x, y, z] along the pull, [0, 0, -1] for straight down");
    }
    double move = object.numbers().required("move_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(
            new HandBend(id, new Spot(segment, along), direction.orElseThrow(), move, extras))
        : Optional.empty();
  }

  static String word(Aid.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Optional<Aid> aid(ObjectReader object) {
    Optional<Aid.Kind> kind =
        object.oneOfRequired("kind", List.of(Aid.Kind.values()), MeansReader::word);
    String segment = object.id("segment");
    double from = object.numbers().along("from");
    double to = object.numbers().along("to");
    boolean cut = kind.filter(k -> k == Aid.Kind.SLOT || k == Aid.Kind.RELIEF_CUT).isPresent();
    boolean deep = kind.filter(k -> k != Aid.Kind.WRAP).isPresent();
    boolean many = kind.filter(k -> k == Aid.Kind.RELIEF_CUT).isPresent();
    OptionalDouble round = needed(object, cut, "round_deg", Quantity.DEGREES, Range.ANY);
    OptionalDouble width = needed(object, cut, "width_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    OptionalDouble depth = needed(object, deep, "depth_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    int count = many ? object.numbers().count("count", 1, MOST_CUTS, 1) : 1;
    Map<String, Object> extras = object.extras();
    if (object.sound() && !(from < to)) {
      object.fault(
          "to",
          "no-stretch",
          "the stretch ends at " + to + " of \"" + segment + "\", where it starts or before",
          "Give from and to as fractions of the segment, from the smaller one");
    }
    return object.sound()
        ? Optional.of(
            new Aid(kind.orElseThrow(), segment, from, to, round, width, depth, count, extras))
        : Optional.empty();
  }

  private static OptionalDouble needed(
      ObjectReader object, boolean asked, String field, Quantity quantity, Range range) {
    return asked
        ? OptionalDouble.of(object.numbers().required(field, quantity, range))
        : OptionalDouble.empty();
  }
}
