// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.Hit;
import boughwright.viewer.window.shell.TestDesk;
import boughwright.viewer.window.work.Workspace;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Chooses the top in the window of the program, by mouse and keyboard; one window for all of it.
 */
@OnScreen
class ApexTest {
  private static final int CHOOSE = 2;

  /**
   * A trunk that leans away, and a thin leader on the other side that a line to a post brings in.
   */
  private static final String TREE =
      """
      {"format": "boughwright-tree", "version": 1, "name": "Young one", "species": "carpinus-betulus",
       "container": {"length_mm": 300, "width_mm": 300, "depth_mm": 120, "mass_kg": 9, "tied_in": true},
       "anchors": [{"id": "post", "at_mm": [-130,0,120], "kind": "frame"}],
       "segments": [
        {"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0,0,0], "end_mm": [0,0,90],
         "caliper_start_mm": 40, "caliper_end_mm": 34},
        {"id": "t2", "parent": "t1", "kind": "trunk", "end_mm": [-60,0,190],
         "caliper_start_mm": 22, "caliper_end_mm": 9},
        {"id": "b1", "parent": "t1", "kind": "branch", "end_mm": [40,0,240],
         "caliper_start_mm": 9, "caliper_end_mm": 5}],
       "plans": [{"id": "a", "front_azimuth_deg": 0}]}
      """;

  /** Half the caliper of its trunk base [m], and heights where only a leader bent in can be [m]. */
  private static final double OVER_BASE = 0.02;

  private static final double LOWEST = 0.2;
  private static final double HIGHEST = 0.25;

  /** Between the places that are looked at; thinner than the leader [m]. */
  private static final double STEP = 0.002;

  @TempDir private Path folder;
  private TestDesk desk;
  private WindowRobot robot;
  private Workspace workspace;

  @BeforeEach
  void open() {
    WindowRobot.requireDisplay();
    desk = TestDesk.whole(folder.resolve("home"));
    robot = desk.robot;
    workspace = desk.window.workspace();
    desk.resize(1600, 1000);
    WindowRobot.doOnEvents(() -> desk.window.choose(CHOOSE));
    robot.click("choose.page.apex");
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private Document document() {
    return WindowRobot.onEvents(workspace::document);
  }

  private void waitForPlans(int count) {
    robot.waitFor(count + " plans", () -> workspace.document().plans().size() == count);
  }

  /** Whether the leader is drawn over the root base, higher than anything else there. */
  private boolean isLeaderOverBase() {
    Canvas canvas = desk.window.parts().canvas();
    for (double up = LOWEST; up < HIGHEST; up += STEP) {
      for (double right = -OVER_BASE; right < OVER_BASE; right += STEP) {
        var at = canvas.project(new Point3(right, 0, up));
        Optional<String> wood = canvas.hit(at.x(), at.y()).map(Hit::spot).map(Spot::segment);
        if (wood.equals(Optional.of("b1"))) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void leadersAreTried_shown_madeAPlan_undoneAndSaved() throws Exception {
    // the hornbeam has enough of them to be stopped in between
    robot.click("choose.apex-find");
    robot.waitFor("it is going on", () -> robot.isThere("status.progress"));
    assertThat(robot.words("choose.apex-find")).isEqualTo("Stop");
    robot.click("choose.apex-find");
    robot.waitFor(
        "it is stopped", () -> robot.words("choose.apex-find").equals("Try every leader"));
    assertThat(robot.isThere("choose.apex-keep-1")).as("nothing is half told").isFalse();

    Path file = Files.writeString(folder.resolve("mine.tree.json"), TREE);
    desk.openFile(file);
    robot.waitFor("the file is open", () -> workspace.file().isPresent());
    robot.waitFor("nothing is bent", () -> !isLeaderOverBase());
    robot.click("choose.apex-find");
    robot.patiently("they are ranked", () -> robot.isThere("choose.apex-keep-2"));
    assertThat(robot.isThere("choose.apex-show-2")).as("only one can be bent").isFalse();

    robot.reachAndClick("choose.apex-show-1");
    robot.waitFor("its pose is shown", this::isLeaderOverBase);
    assertThat(robot.words("canvas.remark")).contains("b1");
    robot.reachAndClick("choose.apex-show-1");
    robot.waitFor("the plan is shown again", () -> !isLeaderOverBase());

    robot.reachAndClick("choose.apex-keep-1");
    waitForPlans(2);
    Plan kept = document().plans().get(1);
    assertThat(WindowRobot.onEvents(workspace::plan)).contains(kept);
    assertThat(kept.apex()).contains("b1");
    assertThat(kept.cuts()).extracting(Spot::segment).contains("t2");
    assertThat(kept.proposals()).singleElement().matches(one -> one.guyLines().size() == 1);
    assertThat(robot.isThere("choose.apex-keep-2")).as("the others stay on offer").isTrue();
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    waitForPlans(1);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
    waitForPlans(2);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    robot.waitFor("it is saved", () -> workspace.history().isSaved());
    assertThat(TreeFiles.read(file).document().plans()).isEqualTo(document().plans());
    assertThat(document().plans().get(1)).isEqualTo(kept);
  }
}
