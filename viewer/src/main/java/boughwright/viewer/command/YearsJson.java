// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.Years;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Growing seasons for programs; an end that never comes is absent. */
final class YearsJson {
  private YearsJson() {}

  static ObjectNode of(Years years) {
    ObjectNode node = JsonAnswer.object();
    put(node, "low", years.low());
    put(node, "likely", years.likely());
    put(node, "high", years.high());
    return node;
  }

  static ObjectNode of(WoundClosure wound) {
    ObjectNode node = JsonAnswer.object();
    node.put("width_mm", number(1000 * wound.width()));
    node.set("years_to_close", of(wound.years()));
    node.put("late", wound.isLate());
    return node;
  }

  private static void put(ObjectNode node, String name, double years) {
    if (Double.isFinite(years)) {
      node.put(name, number(years));
    }
  }
}
