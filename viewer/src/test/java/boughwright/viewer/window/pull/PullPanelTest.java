// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.physics.reach.AnchorPlace;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.Prose;
import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pulls branches of the example in the window of the program, by mouse and keyboard. */
@OnScreen
class PullPanelTest {
  /** Of a difference of two places some hundred millimetres from the origin [m]. */
  private static final double ROUNDING = 1e-12;

  private static final String TIP = "b1d";

  @TempDir private Path folder;
  private PullFrame window;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    window = new PullFrame(folder);
    robot = window.robot;
  }

  @AfterEach
  void close() {
    if (window != null) {
      window.close();
    }
  }

  private void emptyPlan() {
    WindowRobot.doOnEvents(
        () -> {
          window.workspace.edit(PlanEdits.add(new PlanDraft("mine").build()));
          window.workspace.choosePlan("mine");
        });
  }

  private void pullTip() {
    window.pull(window.end(TIP), -20, 60);
  }

  private void readingsAre(JsonNode trial) {
    JsonNode line = trial.get("guy_lines").get(0);
    assertThat(window.reading("pull.tension"))
        .isEqualTo(PullFrame.shown(line.get("tension_N").asDouble(), 1, "N"));
    assertThat(window.reading("pull.shortening"))
        .isEqualTo(PullFrame.shown(line.get("shortening_mm").asDouble(), 1, "mm"));
    window.bendingIs(trial);
  }

  @Test
  void branchPulledAddedAndSavedByKey_showsWhatBendSaysOfTheFile() {
    emptyPlan();
    pullTip();
    String live = window.reading("pull.tension");
    window.robot.patiently(
        "its risk is drawn",
        () -> !((Prose) robot.find("pull.verdict")).getText().contains("being"));
    String drawn = window.reading("pull.breaking");
    window.added(1);
    readingsAre(window.saved("mine"));
    assertThat(window.reading("pull.tension")).isEqualTo(live);
    assertThat(window.reading("pull.breaking")).isEqualTo(drawn);
  }

  @Test
  void pullTyped_byShorteningLengthAndTension_isHeldSoAndSavedSo() {
    emptyPlan();
    pullTip();
    window.fill("pull.tension-typed", "12");
    robot.waitFor("it pulls 12 N", () -> window.isRead("pull.tension", "12.0 N"));
    String before = robot.words("pull.length");
    window.fill("pull.drawn", "7.5");
    robot.waitFor("7.5 mm", () -> window.isRead("pull.shortening", "7.5 mm"));
    robot.waitFor("its length", () -> !robot.words("pull.length").equals(before));
    window.settled();
    String length = robot.words("pull.length");
    window.fill("pull.length", String.valueOf(Double.parseDouble(length) - 1));
    // the length is shown and typed to a tenth
    robot.waitFor(
        "1 mm shorter", () -> List.of("8.4 mm", "8.5 mm", "8.6 mm").contains(shortening()));
    window.fill("pull.drawn", "7.5");
    robot.waitFor("7.5 mm again", () -> window.isRead("pull.shortening", "7.5 mm"));
    window.added(1);
    JsonNode trial = window.saved("mine");
    readingsAre(trial);
    assertThat(trial.get("guy_lines").get(0).get("shortening_mm").asDouble()).isEqualTo(7.5);
  }

  @Test
  void numberBeingTyped_staysWhileTheRiskIsWorkedOut() {
    emptyPlan();
    pullTip();
    window.robot.reach("pull.drawn");
    robot.write("pull.drawn", "7.");
    window.robot.patiently(
        "its risk is drawn",
        () -> !((Prose) robot.find("pull.verdict")).getText().contains("being"));
    robot.type("5");
    assertThat(robot.words("pull.drawn")).isEqualTo("7.5");
    robot.keys(KeyEvent.VK_ENTER);
    robot.waitFor("7.5 mm", () -> window.isRead("pull.shortening", "7.5 mm"));
  }

  private String shortening() {
    return window.reading("pull.shortening");
  }

  @Test
  void movementTyped_isThePlaceItComesNear() {
    emptyPlan();
    Point3 tip = window.end(TIP);
    robot.click(window.canvas().component(), window.pixel(tip).x, window.pixel(tip).y);
    robot.waitFor("it can be typed", () -> robot.find("pull.target-up").isEnabled());
    robot.waitFor("it is held", () -> window.panel().pulling().start().isPresent());
    window.fill("pull.target-up", "-8");
    window.settled();
    String miss = window.reading("pull.miss");
    window.click("pull.target-place");
    Point3 target = window.panel().pulling().draft().orElseThrow().target();
    Point3 start = window.panel().pulling().start().orElseThrow();
    assertThat(target.minus(start).z()).isCloseTo(-0.008, within(ROUNDING));
    assertThat(Double.parseDouble(robot.words("pull.target-up")))
        .isEqualTo(
            new BigDecimal(1000 * target.z()).setScale(1, RoundingMode.HALF_UP).doubleValue());
    window.fill("pull.target-up", robot.words("pull.target-up") + " mm");
    window.settled();
    assertThat(window.reading("pull.miss")).isEqualTo(miss);
  }

  @Test
  void addedBendUndone_isGoneAndRedoBringsItBack() {
    emptyPlan();
    Document before = window.document();
    pullTip();
    window.click("pull.add");
    robot.waitFor("the plan has it", () -> !window.workspace.document().equals(before));
    Document after = window.document();
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    robot.waitFor("it is gone", () -> window.workspace.document().equals(before));
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
    robot.waitFor("it is back", () -> window.workspace.document().equals(after));
  }

  @Test
  void typedPullThatNothingHolds_keepsTheLastGoodPoseAndSaysSo() {
    emptyPlan();
    pullTip();
    String good = window.reading("pull.tension");
    window.fill("pull.tension-typed", "9000");
    Prose trouble = robot.find("pull.trouble", Prose.class);
    robot.waitFor("it is said", () -> trouble.getText().contains("No pose holds"));
    assertThat(window.reading("pull.tension")).isEqualTo(good);
  }

  @Test
  void treeWithoutAPlan_isPulledAndThePlanIsMadeInOneStep() {
    for (String id : List.of("a", "b")) {
      WindowRobot.doOnEvents(() -> window.workspace.edit(PlanEdits.delete(id)));
    }
    Document before = window.document();
    assertThat(before.plans()).isEmpty();
    pullTip();
    window.click("pull.add");
    robot.waitFor("there is a plan", () -> window.workspace.plan().isPresent());
    assertThat(window.plan().proposals()).hasSize(1);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    robot.waitFor("one step back", () -> window.workspace.document().equals(before));
  }

  private GuyLine line(String id) {
    return window.plan().proposals().get(0).guyLines().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void lineOfThePlanDragged_isChangedAndKeepsItsTackle() {
    robot.waitFor("the plan is tried", () -> window.workspace.answer().isPresent());
    GuyLine before = line("g2");
    Point3 pad =
        WindowRobot.onEvents(() -> window.workspace.answer().orElseThrow().trial())
            .lines()
            .get(1)
            .pad();
    Point at = window.seen(pad);
    robot.drag(window.canvas().component(), at, new Point(at.x, at.y + 25));
    window.settled();
    assertThat(window.panel().pulling().changing()).isPresent();
    window.click("pull.add");
    robot.waitFor("it is changed", () -> !line("g2").equals(before));
    GuyLine after = line("g2");
    assertThat(after.at()).isEqualTo(before.at());
    assertThat(after.tackle().strand()).isEqualTo(before.tackle().strand());
    assertThat(window.plan().proposals()).hasSize(1);
    assertThat(line("g1"))
        .isEqualTo(window.document().plan("a").orElseThrow().proposals().get(0).guyLines().get(0));
  }

  @Test
  void anchorDragged_isTiedToTheCandidateUnderTheMouse() {
    emptyPlan();
    pullTip();
    Point3 anchor =
        window.panel().pulling().draft().orElseThrow().drawn().orElseThrow().at().anchor();
    Point from = window.seen(anchor);
    AnchorPlace other =
        window.panel().pulling().anchors().stream()
            .filter(one -> window.seen(one.at()).distance(from) > 60)
            .findFirst()
            .orElseThrow();
    Point to = window.seen(other.at());
    AnchorPlace nearest =
        window.panel().pulling().anchors().stream()
            .min(
                (a, b) ->
                    Double.compare(
                        window.seen(a.at()).distance(to), window.seen(b.at()).distance(to)))
            .orElseThrow();
    robot.drag(window.canvas().component(), from, to);
    robot.waitFor(
        "it is tied there",
        () ->
            window.panel().pulling().fixed().isPresent() && !window.panel().pulling().isSettling());
    assertThat(window.seen(window.panel().pulling().fixed().orElseThrow().at()).distance(to))
        .isLessThanOrEqualTo(window.seen(nearest.at()).distance(to) + 1);
  }

  @Test
  void ownAnchorTyped_isWhatTheLineIsTiedTo() {
    emptyPlan();
    pullTip();
    window.robot.reach("pull.anchor");
    WindowRobot.doOnEvents(
        () -> robot.find("pull.anchor", javax.swing.JComboBox.class).setSelectedIndex(1));
    window.fill("pull.own-right", "140");
    window.fill("pull.own-back", "-20");
    window.fill("pull.own-up", "-10");
    robot.waitFor(
        "it is tied there",
        () ->
            !window.panel().pulling().isSettling()
                && window.panel().pulling().fixed().isPresent()
                && window.panel().pulling().fixed().get().at().z() == -0.010);
    window.settled();
    window.click("pull.add");
    robot.waitFor(
        "it is added", () -> window.workspace.plan().orElseThrow().proposals().size() == 1);
    assertThat(window.plan().proposals().get(0).guyLines().get(0).anchor())
        .isEqualTo(new Anchor.Fixed(new Point3(0.14, -0.02, -0.01)));
  }

  @Test
  void plans_areMadeDuplicatedRenamedAndDeletedInThePanel() {
    window.click("plan.new");
    robot.waitFor("an empty plan", () -> plan("c").proposals().isEmpty());
    WindowRobot.doOnEvents(() -> window.workspace.choosePlan("a"));
    window.click("plan.duplicate");
    robot.waitFor("a copy", () -> window.workspace.plan().orElseThrow().id().equals("d"));
    assertThat(window.plan().proposals())
        .isEqualTo(window.document().plan("a").orElseThrow().proposals());
    window.fill("plan.name", "lighter");
    robot.waitFor("renamed", () -> window.workspace.plan().orElseThrow().id().equals("lighter"));
    window.click("plan.delete");
    robot.waitFor("gone", () -> window.workspace.document().plan("lighter").isEmpty());
    assertThat(window.document().plans()).extracting(Plan::id).containsExactly("a", "b", "c");
  }

  private Plan plan(String id) {
    return window.workspace.document().plan(id).orElseThrow();
  }
}
