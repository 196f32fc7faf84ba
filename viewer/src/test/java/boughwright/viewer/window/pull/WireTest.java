// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.viewer.window.WindowRobot;
import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bends branches by hand in the window of the program, and has the wire found that holds them. */
class WireTest {
  private static final String TIP = "b1d";

  @TempDir private Path folder;
  private PullFrame window;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    window = new PullFrame(folder);
    robot = window.robot;
    WindowRobot.doOnEvents(
        () -> {
          window.workspace.edit(PlanEdits.add(PlanEdits.empty("mine")));
          window.workspace.choosePlan("mine");
        });
    window.click("pull.coil");
  }

  @AfterEach
  void close() {
    if (window != null) {
      window.close();
    }
  }

  private static String shown(double value, String unit) {
    return new BigDecimal(value).setScale(1, RoundingMode.HALF_UP) + " " + unit;
  }

  @Test
  void branchBentByHand_isHeldByTheWireThatBendTells() {
    window.pull(window.end(TIP), -10, 30);
    String rests = window.reading("pull.miss");
    String force = window.reading("pull.tension");
    String by = window.reading("pull.shortening");
    String turns = window.reading("pull.turns");
    String wire = robot.words("pull.wire");
    window.click("pull.add");
    robot.waitFor(
        "the plan has it", () -> window.workspace.plan().orElseThrow().proposals().size() == 1);
    JsonNode trial = window.saved("mine");
    JsonNode held = trial.get("coils").get(0);
    JsonNode coil = held.get("coils").get(0);
    JsonNode hand = held.get("hand_bends").get(0);
    assertThat(held.get("holds").asBoolean()).isTrue();
    assertThat(wire)
        .contains(coil.get("metal").asText().split("-")[0])
        .contains(coil.get("gauge_mm").asText() + " mm")
        .contains(turns + " turns")
        .contains(rests + " from the place");
    assertThat(turns)
        .isEqualTo(
            new BigDecimal(coil.get("turns").asDouble())
                .setScale(1, RoundingMode.HALF_UP)
                .toString());
    assertThat(force).isEqualTo(shown(hand.get("force_N").asDouble(), "N"));
    assertThat(by).isEqualTo(shown(hand.get("move_mm").asDouble(), "mm"));
  }

  @Test
  void stoutTrunkBentByHand_saysThatNoWireHoldsItAndOffersALine() {
    Point3 trunk = window.end("t6");
    Point at = window.pixel(trunk);
    robot.drag(window.canvas().component(), at, new Point(at.x + 90, at.y + 30));
    JButton instead = (JButton) robot.find("pull.instead");
    assertThat(robot.words("pull.trouble")).contains("hold it with a line");
    assertThat(robot.find("pull.add").isEnabled()).isFalse();
    window.reach("pull.instead");
    robot.click(instead);
    window.settled();
    assertThat(robot.find("pull.line", JToggleButton.class).isSelected()).isTrue();
    assertThat(window.panel().pulling().draft().orElseThrow().drawn()).isPresent();
  }
}
