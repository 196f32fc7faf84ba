// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.viewer.window.WindowRobot;
import java.awt.Point;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bends branches by hand in the window of the program, and has the wire found that holds them. */
class WireTest {
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
