// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.front.FrontCase;
import boughwright.modeller.design.front.FrontRules;
import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.plan.TreeStyle;
import boughwright.viewer.scene.FrontWords;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.look.BarReading;
import boughwright.viewer.window.look.Reading;
import boughwright.viewer.window.shell.TestDesk;
import boughwright.viewer.window.work.Workspace;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Chooses front, root base and structure in the window of the program, by mouse and keyboard. */
@OnScreen
class ChooseTest {
  private static final int CHOOSE = 2;

  /** Of an angle read in degrees and turned there and back [rad]. */
  private static final double ROUNDING = 1e-9;

  /** A moved trunk with three branches, one of them too thick, and four roots. */
  private static final String TREE =
      """
      {"format": "boughwright-tree", "version": 1, "name": "Small one", "species": "carpinus-betulus",
       "segments": [
        {"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0,0,0], "end_mm": [20,5,80],
         "caliper_start_mm": 50, "caliper_end_mm": 40},
        {"id": "t2", "parent": "t1", "kind": "trunk", "end_mm": [-10,0,170],
         "caliper_start_mm": 39, "caliper_end_mm": 28},
        {"id": "t3", "parent": "t2", "kind": "trunk", "end_mm": [5,-5,280],
         "caliper_start_mm": 27, "caliper_end_mm": 9},
        {"id": "b1", "parent": "t1", "kind": "branch", "end_mm": [150,20,130],
         "caliper_start_mm": 27, "caliper_end_mm": 9},
        {"id": "b2", "parent": "t2", "kind": "branch", "end_mm": [-120,30,220],
         "caliper_start_mm": 11, "caliper_end_mm": 6},
        {"id": "b3", "parent": "t2", "kind": "branch", "along": 0.6, "end_mm": [0,140,170],
         "caliper_start_mm": 10, "caliper_end_mm": 5},
        {"id": "r1", "parent": "t1", "kind": "root", "along": 0, "end_mm": [90,0,-8],
         "caliper_start_mm": 18, "caliper_end_mm": 6},
        {"id": "r2", "parent": "t1", "kind": "root", "along": 0, "end_mm": [-90,0,-6],
         "caliper_start_mm": 18, "caliper_end_mm": 6},
        {"id": "r3", "parent": "t1", "kind": "root", "along": 0, "end_mm": [0,90,-9],
         "caliper_start_mm": 16, "caliper_end_mm": 6},
        {"id": "r4", "parent": "t1", "kind": "root", "along": 0, "end_mm": [0,-90,-5],
         "caliper_start_mm": 16, "caliper_end_mm": 6}],
       "plans": [{"id": "a", "front_azimuth_deg": 20}]}
      """;

  @TempDir private Path folder;
  private TestDesk desk;
  private WindowRobot robot;
  private Workspace workspace;
  private Path file;

  @BeforeEach
  void open() throws Exception {
    WindowRobot.requireDisplay();
    file = Files.writeString(folder.resolve("mine.tree.json"), TREE);
    desk = TestDesk.whole(folder.resolve("home"));
    robot = desk.robot;
    workspace = desk.window.workspace();
    desk.resize(1600, 1000);
    desk.openFile(file);
    robot.waitFor("the file is open", () -> workspace.file().isPresent());
    WindowRobot.doOnEvents(() -> desk.window.choose(CHOOSE));
    robot.settle();
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private Document document() {
    return WindowRobot.onEvents(workspace::document);
  }

  private Plan plan() {
    return WindowRobot.onEvents(() -> workspace.plan().orElseThrow());
  }

  private Canvas canvas() {
    return WindowRobot.onEvents(() -> desk.window.parts().canvas());
  }

  /** The score as it is told, worked out beside the window. */
  private String scored(FrontPose pose) {
    FrontCase tree = FrontCase.of(document(), Optional.of(plan()), document().fronts().wishes());
    FrontScore score = FrontRules.of(document().fronts().wishes()).score(tree.gauge().read(pose));
    return FrontWords.score(score.total()) + " of 100";
  }

  private String score() {
    return robot.find("choose.score", Reading.class).words();
  }

  @Test
  void treeDraggedAndTiltedByMouseAndKey_showsItsScore_andThePlanTakesIt() throws Exception {
    assertThat(score()).isEqualTo(scored(FrontPose.upright(Math.toRadians(20))));
    JComponent view = (JComponent) robot.find("canvas.view");
    robot.drag(view, new Point(300, 300), new Point(400, 300));
    robot.waitFor("it is turned by 40 degrees", () -> robot.words("choose.turn").equals("60"));
    robot.keys(KeyEvent.VK_SHIFT);
    robot.reachAndFill("choose.tilt-right", "7");
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_DOWN);
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_LEFT);
    robot.waitFor("it is tilted back", () -> robot.words("choose.tilt-right").equals("6"));
    assertThat(robot.words("choose.tilt-toward")).isEqualTo("1");
    FrontPose pose = new FrontPose(Math.toRadians(60), Math.toRadians(6), Math.toRadians(1));
    assertThat(score()).isEqualTo(scored(pose));
    robot.reachAndClick("choose.use");
    robot.waitFor("the plan has it", () -> workspace.plan().orElseThrow().planting().isPresent());
    assertThat(plan().frontAzimuth().getAsDouble()).isCloseTo(Math.toRadians(60), within(ROUNDING));
    // the top of the tree goes to the viewer's right and toward them, as tilted
    var top = pose.toViewer().turn(new boughwright.modeller.geometry.Vector3(0, 0, 1));
    assertThat(top.x()).isPositive();
    assertThat(top.y()).isNegative();
    assertThat(
            FrontPose.of(plan().frontAzimuth().getAsDouble(), plan().planting().get()).tiltRight())
        .isCloseTo(Math.toRadians(6), within(ROUNDING));
    assertThat(Standing.turn(plan().planting().get())).isNotNull();
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    robot.waitFor("it is saved", () -> workspace.history().isSaved());
    assertThat(TreeFiles.read(file).document().plans().get(0).planting())
        .isEqualTo(plan().planting());
  }

  @Test
  void bestFronts_areFound_goneTo_markedNotedComparedAndRemoved() throws Exception {
    robot.reachAndClick("choose.find");
    robot.patiently("they are found", () -> robot.isThere("choose.best-2"));
    String best = robot.find("choose.best-1").getAccessibleContext().getAccessibleName();
    robot.reachAndClick("choose.best-1");
    robot.waitFor("it is gone to", () -> best.endsWith(score()));
    robot.reachAndClick("choose.mark");
    robot.waitFor("it is marked", () -> document().fronts().marked().size() == 1);
    assertThat(robot.isThere("choose.best-1")).as("what was found stays").isTrue();
    robot.reachAndClick("choose.best-2");
    robot.reachAndClick("choose.mark");
    robot.waitFor("both are marked", () -> document().fronts().marked().size() == 2);
    robot.reachAndFill("choose.note-f1", "scar hidden");
    robot.waitFor("it is noted", () -> document().fronts().marked().get(0).note().isPresent());
    robot.reachAndClick("choose.compare-f1");
    robot.reachAndClick("choose.compare-f2");
    robot.waitFor("they are compared", () -> robot.isThere("choose.compared-score-f2"));
    assertThat(best).contains(robot.find("choose.compared-score-f1", Reading.class).words());
    assertThat(robot.find("choose.compared-taper-1", BarReading.class).explanation()).isPresent();
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    robot.waitFor("it is saved", () -> workspace.history().isSaved());
    List<MarkedFront> saved = TreeFiles.read(file).document().fronts().marked();
    assertThat(saved).isEqualTo(document().fronts().marked());
    assertThat(saved.get(0).note()).contains("scar hidden");
    robot.reachAndClick("choose.remove-f1");
    robot.waitFor("it is removed", () -> document().fronts().marked().size() == 1);
    assertThat(robot.isThere("choose.compared-score-f2")).isFalse();
  }

  @Test
  void style_changesTheScore_andIsSaved() {
    String upright = score();
    JComboBox<?> style = robot.find("choose.style", JComboBox.class);
    WindowRobot.doOnEvents(() -> style.setSelectedIndex(TreeStyle.CASCADE.ordinal()));
    robot.waitFor("another score is told", () -> !score().equals(upright));
    assertThat(document().fronts().wishes().style()).contains(TreeStyle.CASCADE);
    assertThat(score()).isEqualTo(scored(FrontPose.upright(Math.toRadians(20))));
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    robot.waitFor("it is undone", () -> score().equals(upright));
  }

  @Test
  void rootBaseFollowsTheTilt_andACutOfTheReviewGoesIntoThePlan() {
    robot.reachAndFill("choose.tilt-right", "0");
    robot.reachAndClick("choose.page.roots");
    String level = robot.find("choose.roots-level", Reading.class).words();
    robot.keysAgain(8, KeyEvent.VK_ALT, KeyEvent.VK_RIGHT);
    robot.waitFor(
        "the roots on the left rise",
        () -> !robot.find("choose.roots-level", Reading.class).words().equals(level));
    assertThat(robot.find("choose.mass", Reading.class).explanation()).isPresent();
    robot.reachAndClick("choose.page.structure");
    robot.waitFor("faults are told", () -> robot.isThere("choose.fault-1"));
    JButton cut =
        (JButton)
            robot.find(
                "a cut",
                part ->
                    part instanceof JButton
                        && String.valueOf(part.getName()).startsWith("choose.cut-"));
    robot.reachAndClick(cut.getName());
    robot.waitFor("the plan has the cut", () -> !workspace.plan().orElseThrow().cuts().isEmpty());
    robot.waitFor("it is drawn", () -> canvas().component().isShowing());
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    robot.waitFor("it is undone", () -> workspace.plan().orElseThrow().cuts().isEmpty());
  }
}
