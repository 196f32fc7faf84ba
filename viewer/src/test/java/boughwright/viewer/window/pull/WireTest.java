// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.problem.InputException;
import boughwright.physics.reach.Choice;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Point;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bends branches by hand in the window of the program, and has the wire found that holds them. */
@OnScreen
class WireTest {
  private static final Path HORNBEAM = Path.of("../examples/hedge-hornbeam.tree.json");

  /** A thin young shoot on a trunk, invented for tests. */
  private static final Path SHOOT =
      Path.of("../physics/src/test/resources/boughwright/physics/reach/young-shoot.tree.json");

  @TempDir private Path folder;
  private PullFrame window;
  private WindowRobot robot;

  private void open(Path tree) {
    window = new PullFrame(folder, tree);
    robot = window.robot;
    WindowRobot.doOnEvents(
        () -> {
          window.workspace.edit(PlanEdits.add(new PlanDraft("mine").build()));
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

  @Test
  void stoutTrunkBentByHand_saysThatNoWireHoldsItAndOffersALine() {
    open(HORNBEAM);
    Point3 trunk = window.end("t6");
    Point at = window.pixel(trunk);
    robot.drag(window.canvas().component(), at, new Point(at.x + 90, at.y + 30));
    JButton instead = (JButton) robot.find("pull.instead");
    assertThat(robot.words("pull.trouble")).contains("hold it with a line");
    assertThat(robot.find("pull.add").isEnabled()).isFalse();
    window.robot.reach("pull.instead");
    robot.click(instead);
    window.settled();
    assertThat(robot.find("pull.line", JToggleButton.class).isSelected()).isTrue();
    assertThat(window.panel().pulling().draft().orElseThrow().drawn()).isPresent();
  }

  private void readingsAre(JsonNode trial) {
    JsonNode held = trial.get("coils").get(0);
    JsonNode hand = held.get("hand_bends").get(0);
    assertThat(window.reading("pull.tension"))
        .isEqualTo(PullFrame.shown(hand.get("force_N").asDouble(), 1, "N"));
    assertThat(window.reading("pull.shortening"))
        .isEqualTo(PullFrame.shown(hand.get("move_mm").asDouble(), 1, "mm"));
    assertThat(window.reading("pull.turns"))
        .isEqualTo(PullFrame.shown(held.get("coils").get(0).get("turns").asDouble(), 1, ""));
    window.bendingIs(trial);
    // of this shoot nothing but a crack can break
    assertThat(window.told())
        .containsPattern("First to break: a crack [^.]*" + window.reading("pull.breaking") + "[.]");
  }

  @Test
  void thinShootBentByHand_isHeldByWireWithTheNumbersOfBend() throws InputException {
    open(SHOOT);
    Point3 tip = window.end("b1");
    Point at = window.pixel(tip);
    Point there = window.seen(tip.plus(new Vector3(-0.005, 0, 0.014)));
    robot.drag(window.canvas().component(), at, there);
    window.settled();
    Draft draft = window.panel().pulling().draft().orElseThrow();
    Choice.Bend bend = draft.coil().flatMap(Choice::bend).orElseThrow();
    assertThat(draft.miss()).isLessThan(draft.comesTo().distance(tip) / 2);
    assertThat(robot.words("pull.wire")).contains("side by side", "comes to rest");
    window.robot.patiently("its risk is drawn", () -> window.panel().pulling().full().isPresent());
    robot.settle();
    String force = window.reading("pull.tension");
    String breaking = window.reading("pull.breaking");
    window.added(1);
    JsonNode trial = window.saved("mine");
    readingsAre(trial);
    assertThat(window.reading("pull.tension")).isEqualTo(force);
    assertThat(window.reading("pull.breaking")).isEqualTo(breaking);
    assertThat(trial.get("coils").get(0).get("coils").get(0).get("gauge_mm").asDouble())
        .isEqualTo(1000 * bend.coil().gauge());
    window.desk.openFile(window.file);
    window.worked();
    readingsAre(trial);
    assertThat(window.read().plan("mine").orElseThrow().proposals().get(0).coils()).hasSize(1);
  }
}
