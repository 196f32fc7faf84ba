// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeJson.number;

import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Setting;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns where a tree stands and grows into plain values; defaults are left out. */
final class SettingJson {
  private SettingJson() {}

  static void put(Map<String, Object> top, Setting setting) {
    setting.container().ifPresent(container -> top.put("container", container(container)));
    if (!setting.growing().equals(Growing.UNSAID)) {
      top.put("growing", growing(setting.growing()));
    }
    if (!setting.anchors().isEmpty()) {
      top.put("anchors", setting.anchors().stream().map(SettingJson::anchor).toList());
    }
  }

  private static Map<String, Object> container(Container container) {
    Map<String, Object> fields = new LinkedHashMap<>();
    Container.Size size = container.size();
    fields.put("length_mm", number(size.length(), Quantity.MILLIMETRES));
    fields.put("width_mm", number(size.width(), Quantity.MILLIMETRES));
    fields.put("depth_mm", number(size.depth(), Quantity.MILLIMETRES));
    if (container.centreX() != 0 || container.centreY() != 0) {
      fields.put(
          "centre_mm",
          List.of(
              number(container.centreX(), Quantity.MILLIMETRES),
              number(container.centreY(), Quantity.MILLIMETRES)));
    }
    if (container.turn() != 0) {
      fields.put("turn_deg", number(container.turn(), Quantity.DEGREES));
    }
    if (container.rim() != 0) {
      fields.put("rim_mm", number(container.rim(), Quantity.MILLIMETRES));
    }
    TreeJson.put(fields, "mass_kg", container.mass(), Quantity.KILOGRAMS);
    if (container.tiedIn()) {
      fields.put("tied_in", true);
    }
    fields.putAll(container.extras());
    return fields;
  }

  private static Map<String, Object> growing(Growing growing) {
    Map<String, Object> fields = new LinkedHashMap<>();
    growing.where().ifPresent(where -> fields.put("where", TreeJson.word(where)));
    TreeJson.put(fields, "ring_mm_per_year", growing.ring(), Quantity.MILLIMETRES);
    fields.putAll(growing.extras());
    return fields;
  }

  private static Map<String, Object> anchor(AnchorPoint anchor) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", anchor.id());
    fields.put("at_mm", TreeJson.point(anchor.at()));
    fields.put("kind", TreeJson.word(anchor.kind()));
    fields.putAll(anchor.extras());
    return fields;
  }
}
