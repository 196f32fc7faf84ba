// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Segment;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.work.Selection;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Split, move, mirror, duplicate and delete by key, each taken back by one undo. */
@OnScreen
class BranchKeysTest {
  private final WindowRobot robot = new WindowRobot();
  @TempDir private Path home;
  private SketchFrame frame;

  @BeforeAll
  static void theme() {
    WindowRobot.requireDisplay();
    WindowRobot.doOnEvents(() -> Theme.apply(Tone.LIGHT, TextSize.USUAL));
  }

  @BeforeEach
  void open() {
    frame = SketchFrame.open(home, Sketches.small());
    robot.click("measure.page.segments");
    WindowRobot.doOnEvents(
        () -> {
          frame.workspace.select(Selection.of("b1"));
          frame.view().requestFocusInWindow();
        });
    robot.waitFor("the tree has the focus", () -> frame.view().isFocusOwner());
  }

  @AfterEach
  void close() {
    frame.close();
  }

  private Segment segment(String id) {
    return WindowRobot.onEvents(() -> Sketches.segment(frame.workspace, id));
  }

  private List<String> ids() {
    return WindowRobot.onEvents(
        () -> frame.workspace.document().tree().segments().stream().map(Segment::id).toList());
  }

  private List<String> picked() {
    return WindowRobot.onEvents(() -> frame.workspace.selection().segments());
  }

  private void type(String field, String text) {
    robot.waitFor(
        field + " has the focus", () -> WindowRobot.focused().map(field::equals).orElse(false));
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    robot.type(text);
  }

  private void enter() {
    robot.keys(KeyEvent.VK_ENTER);
    robot.waitFor("the form is gone", () -> !robot.isThere("short.do"));
  }

  private void assertOneUndoTakesItBack() {
    robot.waitFor("the tree has the focus again", () -> frame.view().isFocusOwner());
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    Document now = WindowRobot.onEvents(frame.workspace::document);
    assertThat(now).isEqualTo(Sketches.small());
  }

  @Test
  void split_makesTwoSegmentsOfOne() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    type("short.along", "0.25");
    enter();

    assertThat(ids()).hasSize(5);
    assertThat(segment("b1").end().x()).isCloseTo(0.02, within(1e-9));
    assertThat(picked()).hasSize(1);
    assertThat(segment(picked().get(0)).end().x()).isCloseTo(0.08, within(1e-9));
    assertOneUndoTakesItBack();
  }

  @Test
  void move_letsAbranchGrowElsewhere() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
    type("short.parent", "t2");
    enter();

    assertThat(segment("b1").parent()).contains("t2");
    assertThat(segment("b1b").end().z()).isCloseTo(0.17, within(1e-9));
    assertOneUndoTakesItBack();
  }

  @Test
  void mirror_addsTheBranchOnTheOtherSide() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_R);
    robot.find("short.azimuth");
    enter();

    assertThat(ids()).hasSize(6);
    assertThat(segment(picked().get(0)).end().x()).isCloseTo(-0.08, within(1e-9));
    assertThat(segment(picked().get(1)).end().x()).isCloseTo(-0.14, within(1e-9));
    assertOneUndoTakesItBack();
  }

  @Test
  void duplicate_addsAturnedCopyElsewhere() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_D);
    type("short.parent", "t2");
    robot.keys(KeyEvent.VK_TAB);
    robot.keys(KeyEvent.VK_TAB);
    type("short.turn", "90");
    enter();

    assertThat(ids()).hasSize(6);
    Segment copy = segment(picked().get(0));
    assertThat(copy.parent()).contains("t2");
    assertThat(copy.end().x()).isCloseTo(0, within(1e-9));
    assertThat(copy.end().y()).isCloseTo(-0.08, within(1e-9));
    assertOneUndoTakesItBack();
  }

  @Test
  void delete_takesTheBranchAndWhatItCarriesOut() {
    robot.keys(KeyEvent.VK_DELETE);

    assertThat(ids()).containsExactly("t1", "t2");
    assertThat(picked()).containsExactly("t1");
    assertOneUndoTakesItBack();
  }

  @Test
  void escape_leavesAllAsItWas() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    robot.find("short.along");
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("the form is gone", () -> !robot.isThere("short.do"));

    assertThat(WindowRobot.onEvents(frame.workspace::document)).isEqualTo(Sketches.small());
  }

  @Test
  void aRefusedForm_staysAndSaysWhy() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
    type("short.parent", "b1b");
    robot.keys(KeyEvent.VK_ENTER);

    assertThat(robot.words("short.refusal")).contains("grows on it");
    robot.keys(KeyEvent.VK_ESCAPE);
    assertThat(WindowRobot.onEvents(frame.workspace::document)).isEqualTo(Sketches.small());
  }
}
