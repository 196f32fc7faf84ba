// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.SettingRules;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads where a tree stands and grows: its container, how fast it thickens, what lines tie to. */
final class SettingReader {
  /** No tree lays on a ring of a metre [m]. */
  private static final double WIDEST_RING = 1;

  private SettingReader() {}

  /** The setting; only to be used if the file is sound. */
  static Setting setting(ObjectReader top) {
    Optional<Container> container =
        top.object("container", "container").flatMap(SettingReader::container);
    Growing growing =
        top.object("growing", "growing").map(SettingReader::growing).orElse(Growing.UNSAID);
    return new Setting(container, growing, anchors(top));
  }

  private static Optional<Container> container(ObjectReader object) {
    NumberReader numbers = object.numbers();
    double length = numbers.required("length_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double width = numbers.required("width_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double depth = numbers.required("depth_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double[] centre = numbers.planPoint("centre_mm").orElse(new double[] {0, 0});
    double turn = numbers.optional("turn_deg", Quantity.DEGREES, Range.ANY).orElse(0);
    double rim = numbers.optional("rim_mm", Quantity.MILLIMETRES, Range.ANY).orElse(0);
    OptionalDouble mass = numbers.optional("mass_kg", Quantity.KILOGRAMS, Range.POSITIVE);
    boolean tied = object.flag("tied_in").orElse(false);
    Map<String, Object> extras = object.extras();
    if (!object.sound()) {
      return Optional.empty();
    }
    Container container =
        new Container(
            new Container.Size(length, width, depth),
            centre[0],
            centre[1],
            turn,
            rim,
            mass,
            tied,
            extras);
    PlanReader.note(object, SettingRules.container(container));
    return Optional.of(container);
  }

  private static Growing growing(ObjectReader object) {
    Optional<Growing.Where> where = object.choice("where", Growing.Where.class);
    OptionalDouble ring =
        object.numbers().optional("ring_mm_per_year", Quantity.MILLIMETRES, Range.NOT_NEGATIVE);
    if (ring.isPresent() && !(ring.getAsDouble() < WIDEST_RING)) {
      object.fault(
          "ring_mm_per_year",
          "out-of-range",
          "ring_mm_per_year is a metre or more",
          "Give how much the radius of the wood grows in a year, mostly 0.3 to 5 mm");
    }
    Map<String, Object> extras = object.extras();
    if (!object.sound()) {
      return Growing.UNSAID;
    }
    Growing growing = new Growing(where, ring, extras);
    PlanReader.note(object, SettingRules.growing(growing));
    return growing;
  }

  private static List<AnchorPoint> anchors(ObjectReader top) {
    List<AnchorPoint> anchors = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Value.Fields fields : top.objects("anchors", Limits.ANCHORS)) {
      ObjectReader object = SegmentReader.named(fields, "anchor", top.problems());
      String id = PlanReader.uniqueId(object, ids, "anchor");
      Optional<Point3> at = object.numbers().point("at_mm");
      if (!object.has("at_mm")) {
        object.missing("at_mm", "Measure it from the trunk base and give [x, y, z] in mm");
      }
      Optional<AnchorKind> kind =
          object.oneOfRequired(
              "kind", List.of(AnchorKind.values()), one -> one.name().toLowerCase(Locale.ROOT));
      Map<String, Object> extras = object.extras();
      if (object.sound()) {
        AnchorPoint anchor = new AnchorPoint(id, at.orElseThrow(), kind.orElseThrow(), extras);
        anchors.add(anchor);
        PlanReader.note(object, SettingRules.anchor(anchor));
      }
    }
    return anchors;
  }
}
