// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.Looks;
import boughwright.viewer.window.work.Selection;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pads of leaves, given by mouse and keyboard. */
@OnScreen
class PadFormTest {
  private final WindowRobot robot = new WindowRobot();
  @TempDir private Path home;
  private SketchFrame frame;

  @BeforeEach
  void open() throws Exception {
    frame = SketchFrame.open(home, Sketches.small());
    robot.click("measure.page.foliage");
  }

  @AfterEach
  void close() {
    frame.close();
  }

  private List<Pad> pads() {
    return WindowRobot.onEvents(() -> frame.workspace.document().tree().foliage().pads());
  }

  private void add(String segment) {
    int before = pads().size();
    WindowRobot.doOnEvents(() -> frame.workspace.select(Selection.of(segment)));
    robot.click("measure.pad.add");
    robot.waitFor("a pad is added", () -> pads().size() == before + 1);
  }

  @Test
  void pad_isAddedOnThePickedBranch_sizedByTyping_andTakenOut() {
    add("b1");
    assertThat(pads()).extracting(Pad::segment).containsExactly("b1");
    robot.fill("measure.pad.along", "0.8");
    robot.fill("measure.pad.length", "9 cm");
    robot.fill("measure.pad.width", "50");
    robot.fill("measure.pad.thickness", "25");
    robot.fill("measure.pad.raised", "-4");
    Pad typed = pads().get(0);
    assertThat(typed.along()).isEqualTo(0.8);
    assertThat(typed.length()).isCloseTo(0.09, within(1e-12));
    assertThat(typed.width()).isCloseTo(0.05, within(1e-12));
    assertThat(typed.thickness()).isCloseTo(0.025, within(1e-12));
    assertThat(typed.raised()).isCloseTo(-0.004, within(1e-12));
    WindowRobot.doOnEvents(frame.workspace::undo);
    assertThat(pads().get(0).raised()).isPositive();
    robot.click("measure.pad.remove");
    robot.waitFor("the pad is gone", () -> pads().isEmpty());
  }

  @Test
  void segmentThatIsNone_isRefusedWhereItIsTyped() {
    add("b1");
    robot.fill("measure.pad.segment", "zz");
    assertThat(robot.words("measure.pad.segment.fault")).contains("no segment is called so");
    assertThat(pads()).extracting(Pad::segment).containsExactly("b1");
    robot.fill("measure.pad.segment", "t1");
    assertThat(pads()).extracting(Pad::segment).containsExactly("t1");
  }

  @Test
  void guess_isTakenOverInOneStep() {
    robot.click("measure.pad.guess");
    robot.waitFor("pads are there", () -> !pads().isEmpty());
    assertThat(robot.find("measure.pad.add", JComponent.class).isShowing()).isTrue();
    assertThat(robot.isThere("measure.pad.guess")).isFalse();
    WindowRobot.doOnEvents(frame.workspace::undo);
    assertThat(pads()).isEmpty();
  }

  @Test
  void evergreen_isSaid() {
    JComboBox<?> leaves = robot.find("measure.foliage.leaves", JComboBox.class);
    WindowRobot.doOnEvents(() -> leaves.setSelectedIndex(2));
    assertThat(WindowRobot.onEvents(() -> frame.workspace.document().tree().foliage().leaves()))
        .contains(Leaves.EVERGREEN);
  }

  @Test
  void inLeaf_isChosenInThePanelLook() {
    robot.keys(java.awt.event.KeyEvent.VK_ALT, java.awt.event.KeyEvent.VK_L);
    robot.click("look.in_leaf");
    robot.waitFor(
        "the tree is in leaf",
        () -> WindowRobot.onEvents(frame.canvas::looks).has(Looks.Extra.IN_LEAF));
    robot.click("look.in_leaf");
    robot.waitFor(
        "the tree is bare",
        () -> !WindowRobot.onEvents(frame.canvas::looks).has(Looks.Extra.IN_LEAF));
  }
}
