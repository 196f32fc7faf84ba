// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Link;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Wound;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads one segment or one wound. */
final class SegmentReader {
  private SegmentReader() {}

  /** A reader whose messages name the object by its kind and id. */
  static ObjectReader named(Value.Fields fields, String kind, ProblemList problems) {
    return new ObjectReader(fields, name(fields, kind), problems);
  }

  /** Words for an object: its kind, and its id if it has one. */
  static String name(Value.Fields fields, String kind) {
    return fields.members().get("id") instanceof Value.Text id
        ? kind + " " + Value.Text.quoted(id.text())
        : kind + " without an id";
  }

  /** What can be told about a faulty segment's place in the tree; nothing unknown is faulted. */
  static Link link(Value.Fields fields) {
    String id =
        fields.members().get("id") instanceof Value.Text text ? text.text() : unnamed(fields);
    Value parent = fields.members().get("parent");
    if (parent instanceof Value.Text text) {
      return new Link(id, Optional.of(text.text()));
    }
    boolean base = parent == null || parent instanceof Value.Nothing;
    return new Link(id, base ? Optional.empty() : Optional.of(id));
  }

  private static String unnamed(Value.Fields fields) {
    return "line " + fields.line() + ", column " + fields.column();
  }

  static Optional<Segment> segment(ObjectReader object) {
    NumberReader numbers = object.numbers();
    String id = object.id("id");
    Optional<String> parent = parent(object);
    double along = numbers.optional("along", Quantity.FRACTION, Range.ZERO_TO_ONE).orElse(1);
    Optional<Joint> joins = object.choice("joins", Joint.class);
    Optional<Kind> kind = object.choice("kind", Kind.class);
    if (!object.has("kind")) {
      object.missing("kind", "Write trunk, branch, root, sacrifice or deadwood");
    }
    Optional<Point3> start = start(object, parent);
    Optional<Point3> end = numbers.point("end_mm");
    if (!object.has("end_mm")) {
      object.missing("end_mm", "Measure where it ends and give [x, y, z] in mm");
    }
    double caliperStart =
        numbers.required("caliper_start_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double caliperEnd = numbers.required("caliper_end_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    OptionalDouble bark = numbers.optional("bark_mm", Quantity.MILLIMETRES, Range.NOT_NEGATIVE);
    Optional<Boolean> live = object.flag("live");
    Features features = FeaturesReader.features(object);
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(
            new Segment(
                id,
                parent,
                along,
                joins,
                kind.orElseThrow(),
                start,
                end.orElseThrow(),
                caliperStart,
                caliperEnd,
                bark,
                live,
                features,
                extras))
        : Optional.empty();
  }

  /** The parent; a segment without the field, or with null in it, is the trunk base. */
  private static Optional<String> parent(ObjectReader object) {
    Optional<Value> parent = object.value("parent");
    return parent.isEmpty() || parent.get() instanceof Value.Nothing
        ? Optional.empty()
        : object.text("parent");
  }

  private static Optional<Point3> start(ObjectReader object, Optional<String> parent) {
    boolean base = parent.isEmpty() && !(object.at("parent") instanceof Value.Text);
    boolean given = object.has("start_mm");
    if (given && parent.isPresent()) {
      object.fault(
          "start_mm",
          "start-on-parent",
          "start_mm is given, but the segment starts on its parent \"" + parent.get() + "\"",
          "Leave start_mm out; \"along\" says where on the parent's axis it starts");
      return Optional.empty();
    }
    if (!given && base && object.sound()) {
      object.missing(
          "start_mm", "Give the start of the trunk base, mostly [0, 0, 0], or name its parent");
    }
    return object.numbers().point("start_mm");
  }

  static Optional<Wound> wound(ObjectReader object) {
    NumberReader numbers = object.numbers();
    String id = object.id("id");
    String segment = object.id("segment");
    double along = numbers.along("along");
    double round = numbers.required("round_deg", Quantity.DEGREES, Range.ANY);
    double width = numbers.required("width_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double height = numbers.required("height_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    Optional<LocalDate> seenOn = Dates.read(object, "seen_on");
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(new Wound(id, segment, along, round, width, height, seenOn, extras))
        : Optional.empty();
  }
}
