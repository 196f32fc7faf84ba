// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.WoodOverride;
import boughwright.modeller.tree.Wound;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Writes a document as the text of a tree file, version 1; defaults are left out. */
final class TreeJson {
  private TreeJson() {}

  /** The bytes of the file. */
  static byte[] bytes(Document document) {
    return text(document).getBytes(StandardCharsets.UTF_8);
  }

  static String text(Document document) {
    Tree tree = document.tree();
    Map<String, Object> top = new LinkedHashMap<>();
    top.put("format", Header.FORMAT);
    top.put("version", Header.VERSION);
    top.put("name", tree.name());
    top.put("species", wood(tree.wood()));
    tree.measuredOn().ifPresent(day -> top.put("measured_on", day.toString()));
    put(top, "bark_mm", tree.bark(), Quantity.MILLIMETRES);
    put(top, "caliper_error_mm", tree.caliperError(), Quantity.MILLIMETRES);
    top.put("unions", word(tree.unions()));
    if (!tree.condition().equals(Condition.UNKNOWN)) {
      top.put("condition", PullTestJson.condition(tree.condition()));
    }
    SettingJson.put(top, tree.setting());
    top.put("segments", tree.segments().stream().map(SegmentJson::segment).toList());
    if (!tree.overrides().isEmpty()) {
      Map<String, Object> wood = new LinkedHashMap<>();
      tree.overrides().forEach(override -> wood.put(override.pattern(), override(override)));
      top.put("wood", wood);
    }
    if (!tree.wounds().isEmpty()) {
      top.put("wounds", tree.wounds().stream().map(TreeJson::wound).toList());
    }
    FoliageJson.put(top, tree.foliage());
    if (!tree.pullTests().isEmpty()) {
      top.put("pull_tests", tree.pullTests().stream().map(PullTestJson::test).toList());
    }
    if (!document.plans().isEmpty()) {
      top.put("plans", document.plans().stream().map(PlanJson::plan).toList());
    }
    BackdropJson.put(top, document.backdrops());
    FrontJson.put(top, document.fronts());
    top.putAll(document.extras());
    return JsonLayout.of(top);
  }

  private static Object wood(TreeWood wood) {
    if (wood instanceof TreeWood.Own own) {
      Map<String, Object> fields = new LinkedHashMap<>();
      fields.put("name", own.name());
      fields.put("moe_GPa", number(own.moe(), Quantity.GIGAPASCALS));
      put(fields, "shear_GPa", own.shearModulus(), Quantity.GIGAPASCALS);
      own.response().ifPresent(response -> fields.put("response", word(response)));
      own.source().ifPresent(source -> fields.put("source", source));
      fields.putAll(own.extras());
      return fields;
    }
    return ((TreeWood.OfSpecies) wood).key();
  }

  private static Map<String, Object> override(WoodOverride override) {
    Map<String, Object> fields = new LinkedHashMap<>();
    put(fields, "moe_GPa", override.moe(), Quantity.GIGAPASCALS);
    put(fields, "moe_cv", override.moeSpread(), Quantity.FRACTION);
    put(fields, "shear_GPa", override.shearModulus(), Quantity.GIGAPASCALS);
    override.response().ifPresent(response -> fields.put("response", word(response)));
    override.source().ifPresent(source -> fields.put("source", source));
    fields.putAll(override.extras());
    return fields;
  }

  private static Map<String, Object> wound(Wound wound) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", wound.id());
    fields.put("segment", wound.segment());
    fields.put("along", number(wound.along(), Quantity.FRACTION));
    fields.put("round_deg", number(wound.round(), Quantity.DEGREES));
    fields.put("width_mm", number(wound.width(), Quantity.MILLIMETRES));
    fields.put("height_mm", number(wound.height(), Quantity.MILLIMETRES));
    wound.seenOn().ifPresent(day -> fields.put("seen_on", day.toString()));
    fields.putAll(wound.extras());
    return fields;
  }

  static BigDecimal number(double value, Quantity quantity) {
    return quantity.fromSi(value);
  }

  static void put(
      Map<String, Object> fields, String name, OptionalDouble value, Quantity quantity) {
    if (value.isPresent()) {
      fields.put(name, number(value.getAsDouble(), quantity));
    }
  }

  static List<BigDecimal> point(Point3 point) {
    return List.of(
        number(point.x(), Quantity.MILLIMETRES),
        number(point.y(), Quantity.MILLIMETRES),
        number(point.z(), Quantity.MILLIMETRES));
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
