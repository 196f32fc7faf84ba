// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.plan.FrontChoice;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.NameRules;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Reads by what a person judges fronts, and which fronts they marked. */
final class FrontReader {
  private FrontReader() {}

  static FrontChoice fronts(ObjectReader top) {
    return top.object("fronts", "fronts").map(FrontReader::choice).orElse(FrontChoice.UNSAID);
  }

  private static FrontChoice choice(ObjectReader object) {
    NumberReader numbers = object.numbers();
    Optional<TreeStyle> style = object.choice("style", TreeStyle.class);
    OptionalDouble eye = numbers.optional("eye_mm", Quantity.MILLIMETRES, Range.ANY);
    OptionalDouble distance =
        numbers.optional("eye_distance_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    Map<FrontMeasure, Double> weights =
        object.object("weights", "weights of fronts").map(FrontReader::weights).orElse(Map.of());
    List<MarkedFront> marked = marked(object);
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? new FrontChoice(new FrontWishes(style, eye, distance, weights, extras), marked)
        : FrontChoice.UNSAID;
  }

  /** A weight nobody knows is refused: left out, it would change the judgement unsaid. */
  private static Map<FrontMeasure, Double> weights(ObjectReader object) {
    Map<FrontMeasure, Double> weights = new EnumMap<>(FrontMeasure.class);
    for (FrontMeasure measure : FrontMeasure.values()) {
      object
          .numbers()
          .optional(TreeJson.word(measure), Quantity.FRACTION, Range.NOT_NEGATIVE)
          .ifPresent(weight -> weights.put(measure, weight));
    }
    List<String> known = Stream.of(FrontMeasure.values()).map(TreeJson::word).toList();
    for (String name : object.unasked()) {
      object.unknownWord(name, "a weight is called " + Value.Text.quoted(name), known, name);
    }
    return weights;
  }

  private static List<MarkedFront> marked(ObjectReader object) {
    List<MarkedFront> all = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Value.Fields fields : object.objects("marked", Limits.FRONTS)) {
      ObjectReader one = SegmentReader.named(fields, "marked front", object.problems());
      marked(one, ids).ifPresent(all::add);
    }
    return all;
  }

  private static Optional<MarkedFront> marked(ObjectReader object, Set<String> ids) {
    String id = PlanReader.uniqueId(object, ids, "marked front");
    double azimuth = object.numbers().required("front_azimuth_deg", Quantity.DEGREES, Range.ANY);
    Optional<Planting> planting =
        object.object("planting", object.subject() + " planting").flatMap(PlanReader::planting);
    Optional<String> note = object.text("note");
    note.flatMap(NameRules::faultOfName)
        .ifPresent(
            found ->
                object.fault(
                    "note", "bad-note", "note " + found, "Write another note, or leave it out"));
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(new MarkedFront(id, azimuth, planting, note, extras))
        : Optional.empty();
  }
}
