// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.HardwareFinding;
import boughwright.physics.trial.LineHardware;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What is said of tackle and container, for programs: newtons, millimetres, megapascals. */
final class HardwareJson {
  private HardwareJson() {}

  static ObjectNode of(Hardware hardware) {
    ObjectNode node = JsonAnswer.object();
    node.set("lines", JsonAnswer.list(hardware.lines(), HardwareJson::line));
    node.set("standing", findings(hardware.standing()));
    return node;
  }

  private static ObjectNode line(LineHardware line) {
    ObjectNode node = JsonAnswer.object();
    node.put("id", line.line());
    node.put("pull_N", number(line.pull()));
    put(node, "safe_load_N", line.safeLoad(), 1);
    put(node, "breaking_load_N", line.breakingLoad(), 1);
    node.put("stretch_mm", number(1000 * line.stretch()));
    line.turns().ifPresent(turns -> node.set("turns", turns(turns)));
    ObjectNode pad = node.putObject("pad");
    put(pad, "pressure_MPa", line.padPressure(), 1e-6);
    pad.put("length_needed_mm", number(1000 * line.padNeeded()));
    pad.put("off_square_deg", number(Math.toDegrees(line.offSquare())));
    node.set("findings", findings(line.findings()));
    return node;
  }

  private static ObjectNode turns(LineHardware.Turns turns) {
    ObjectNode node = JsonAnswer.object();
    node.put("in", number(turns.in()));
    node.put("to_add", number(turns.toAdd()));
    put(node, "left", turns.left(), 1);
    return node;
  }

  private static void put(ObjectNode node, String name, OptionalDouble value, double factor) {
    if (value.isPresent()) {
      node.put(name, number(factor * value.getAsDouble()));
    }
  }

  private static ArrayNode findings(List<HardwareFinding> findings) {
    ArrayNode all = JsonAnswer.array();
    for (HardwareFinding finding : findings) {
      ObjectNode node = JsonAnswer.object();
      node.put("level", finding.level().name().toLowerCase(Locale.ROOT));
      node.put("about", finding.topic().name().toLowerCase(Locale.ROOT));
      node.put("text", finding.sentence());
      all.add(node);
    }
    return all;
  }
}
