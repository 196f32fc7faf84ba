// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.PlanRules;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Tackle;
import boughwright.modeller.tree.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads what bends and holds a proposal: guy-lines, weights, coils, hands and aids. */
final class LoadReader {
  private static final List<String> HOLDS = List.of("tension_N", "length_mm", "shorten_mm");

  private final ObjectReader proposal;
  private final PlanRules rules;

  LoadReader(ObjectReader proposal, PlanRules rules) {
    this.proposal = proposal;
    this.rules = rules;
  }

  private ObjectReader part(Value.Fields fields, String kind) {
    return new ObjectReader(fields, proposal.subject() + " " + kind, proposal.problems());
  }

  List<GuyLine> guyLines(Set<String> lineIds) {
    return each(
        "guy_lines",
        fields -> SegmentReader.name(fields, "guy-line"),
        object -> guyLine(object, lineIds),
        rules::guyLine);
  }

  private Optional<GuyLine> guyLine(ObjectReader object, Set<String> lineIds) {
    String id = PlanReader.uniqueId(object, lineIds, "guy-line of this plan");
    String segment = object.id("segment");
    double along = object.numbers().along("along");
    OptionalDouble pad = object.numbers().optional("pad_round_deg", Quantity.DEGREES, Range.ANY);
    Optional<Anchor> anchor = anchor(object);
    Optional<Hold> hold = hold(object);
    Tackle tackle = TackleReader.tackle(object);
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(
            new GuyLine(
                id,
                new Spot(segment, along),
                pad,
                anchor.orElseThrow(),
                hold.orElseThrow(),
                tackle,
                extras))
        : Optional.empty();
  }

  private static Optional<Anchor> anchor(ObjectReader object) {
    Optional<Point3> point = object.numbers().point("anchor_mm");
    Optional<Spot> spot =
        object.object("anchor", object.subject() + " anchor").flatMap(PlanReader::spot);
    if (object.has("anchor_mm") == object.has("anchor")) {
      boolean both = object.has("anchor");
      object.fault(
          "anchor",
          both ? "two-anchors" : "no-anchor",
          both ? "both anchor_mm and anchor are given" : "neither anchor_mm nor anchor is given",
          "Give anchor_mm [x, y, z] for a fixed point, or anchor with a segment and along");
    }
    return point.<Anchor>map(Anchor.Fixed::new).or(() -> spot.map(Anchor.OnTree::new));
  }

  private static Optional<Hold> hold(ObjectReader object) {
    NumberReader numbers = object.numbers();
    OptionalDouble tension = numbers.optional("tension_N", Quantity.NEWTONS, Range.POSITIVE);
    OptionalDouble length = numbers.optional("length_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    OptionalDouble shorten = numbers.optional("shorten_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    List<String> given = HOLDS.stream().filter(object::has).toList();
    if (given.size() != 1) {
      object.fault(
          given.isEmpty() ? "id" : given.get(1),
          given.isEmpty() ? "no-hold" : "two-holds",
          given.isEmpty()
              ? "nothing says how hard or how far the line pulls"
              : String.join(" and ", given) + " are given together",
          "Give exactly one of " + String.join(", ", HOLDS));
    }
    return Stream.of(
            map(tension).map(n -> (Hold) new Hold.Tension(n)),
            map(length).map(m -> (Hold) new Hold.Length(m)),
            map(shorten).map(m -> (Hold) new Hold.Shortening(m)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Double> map(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }

  List<HungWeight> hungWeights() {
    List<HungWeight> weights = new ArrayList<>();
    for (Value.Fields fields : proposal.objects("hung_weights", Limits.PARTS)) {
      ObjectReader object = part(fields, "hung weight");
      String segment = object.id("segment");
      double along = object.numbers().along("along");
      double mass = object.numbers().required("mass_kg", Quantity.KILOGRAMS, Range.POSITIVE);
      Map<String, Object> extras = object.extras();
      if (object.sound()) {
        HungWeight weight = new HungWeight(new Spot(segment, along), mass, extras);
        weights.add(weight);
        PlanReader.note(object, rules.place(weight.at(), "segment"));
      }
    }
    return weights;
  }

  List<Coil> coils() {
    return each("coils", fields -> "coil", CoilReader::coil, rules::coil);
  }

  List<HandBend> handBends(Set<String> ids) {
    return each(
        "hand_bends",
        fields -> SegmentReader.name(fields, "hand bend"),
        object -> MeansReader.handBend(object, ids),
        bend -> rules.place(bend.at(), "segment"));
  }

  List<Aid> aids() {
    return each("aids", fields -> "aid", MeansReader::aid, rules::aid);
  }

  /**
   * Reads each object of a list and judges those that are sound.
   *
   * @param field the list
   * @param naming what an object is called in a fault
   * @param reader reads one
   * @param rule what is wrong with one on its tree
   */
  private <T> List<T> each(
      String field,
      Function<Value.Fields, String> naming,
      Function<ObjectReader, Optional<T>> reader,
      Function<T, List<Finding>> rule) {
    List<T> read = new ArrayList<>();
    for (Value.Fields fields : proposal.objects(field, Limits.PARTS)) {
      ObjectReader object = part(fields, naming.apply(fields));
      reader
          .apply(object)
          .ifPresent(
              one -> {
                read.add(one);
                PlanReader.note(object, rule.apply(one));
              });
    }
    return read;
  }
}
