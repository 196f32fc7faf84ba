// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JSlider;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every control of every page has a name that can be spoken, and Tab comes to it. */
class ReachedByKeyTest {
  private static final int MOST_STEPS = 120;

  private final WindowRobot robot = new WindowRobot();
  private SketchFrame frame;

  @BeforeAll
  static void theme() {
    WindowRobot.requireDisplay();
    WindowRobot.doOnEvents(() -> Theme.apply(Tone.LIGHT, TextSize.USUAL));
  }

  @BeforeEach
  void open() {
    frame = SketchFrame.open(Sketches.small());
  }

  @AfterEach
  void close() {
    frame.close();
  }

  private static boolean isControl(Component part) {
    return part instanceof AbstractButton button && button.isFocusable()
        || part instanceof JTextField field && field.isEditable()
        || part instanceof JComboBox
        || part instanceof JSlider
        || part instanceof JTable
        || part instanceof JList<?> list && list.isFocusable();
  }

  /** Controls in the panel that show and can be used, without the arrow inside a choice. */
  private List<Component> controls() {
    return WindowRobot.onEvents(
        () -> {
          List<Component> controls = new ArrayList<>();
          for (Component part : WindowRobot.all(frame.panel.component())) {
            boolean inside = part.getParent() instanceof JComboBox;
            if (isControl(part) && part.isShowing() && part.isEnabled() && !inside) {
              controls.add(part);
            }
          }
          return controls;
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {"tree", "draw", "table", "wounds", "photos"})
  void tabComesToEveryControl_andEachHasASpokenName(String page) {
    robot.click("measure.page." + page);
    List<Component> controls = controls();
    assertThat(controls).hasSizeGreaterThan(5);
    WindowRobot.doOnEvents(() -> controls.get(0).requestFocusInWindow());
    robot.waitFor("the first control has the focus", () -> controls.get(0).isFocusOwner());

    Set<Component> reached = new HashSet<>();
    for (int step = 0; step < MOST_STEPS && !reached.containsAll(controls); step++) {
      reached.add(
          WindowRobot.onEvents(
              () -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()));
      if (WindowRobot.focused().map("measure.table"::equals).orElse(false)) {
        robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_TAB);
      } else {
        robot.keys(KeyEvent.VK_TAB);
      }
    }

    for (Component control : controls) {
      if (!(control instanceof AbstractButton button && !button.isSelected() && inGroup(button))) {
        assertThat(reached).as(String.valueOf(control.getName())).contains(control);
      }
      assertThat(control.getAccessibleContext().getAccessibleName())
          .as(String.valueOf(control.getName()))
          .isNotBlank();
    }
  }

  /** In a group of buttons Tab comes to the chosen one, arrow keys go to the others. */
  private static boolean inGroup(AbstractButton button) {
    return button.getModel() instanceof javax.swing.DefaultButtonModel model
        && model.getGroup() != null;
  }

  @Test
  void pages_areReachedByTheirLetters() {
    robot.click("measure.page.draw");

    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_U);

    robot.find("measure.wound.add");
  }

  @Test
  void tools_areTakenAndLaidDown_byKey() {
    robot.click("measure.page.draw");

    robot.keys(KeyEvent.VK_F7);
    AbstractButton draw = robot.find("tree.draw", AbstractButton.class);
    assertThat(WindowRobot.onEvents(draw::isSelected)).isTrue();
    robot.keys(KeyEvent.VK_F8);
    assertThat(WindowRobot.onEvents(draw::isSelected)).isFalse();
    robot.keys(KeyEvent.VK_F8);

    AbstractButton move = robot.find("tree.move-node", AbstractButton.class);
    assertThat(WindowRobot.onEvents(move::isSelected)).isFalse();
  }
}
