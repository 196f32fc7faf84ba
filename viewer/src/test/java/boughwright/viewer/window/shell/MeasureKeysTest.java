// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.Wound;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each page of Measure, reached and worked without a mouse. */
@OnScreen
class MeasureKeysTest {
  private static final int MOST_TABS = 90;

  @TempDir Path folder;
  private TestDesk test;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    Graphics.require();
    test = TestDesk.whole(folder.resolve("home"));
    robot = test.robot;
    test.resize(1280, 860);
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_2);
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private Tree tree() {
    return WindowRobot.onEvents(() -> test.window.workspace().document().tree());
  }

  /**
   * Goes to a page by the letter that is underlined on its button, or from the others by arrows.
   */
  private void page(String name) {
    AbstractButton button = robot.find("measure.page." + name, AbstractButton.class);
    if (button.getMnemonic() != 0) {
      robot.keys(KeyEvent.VK_ALT, button.getMnemonic());
    } else {
      tabTo("measure.page.wounds");
      robot.keys(KeyEvent.VK_RIGHT);
      AbstractButton between = robot.find("measure.page.foliage", AbstractButton.class);
      robot.waitFor("foliage is shown", between::isSelected);
      robot.keys(KeyEvent.VK_RIGHT);
    }
    robot.waitFor(name + " is shown", button::isSelected);
  }

  private void tabTo(String name) {
    for (int n = 0; n < MOST_TABS; n++) {
      if (WindowRobot.onEvents(WindowRobot::focused).filter(name::equals).isPresent()) {
        return;
      }
      robot.keys(KeyEvent.VK_TAB);
    }
    throw new AssertionError(name + " is not reached by Tab");
  }

  private void waitForFocus(String name) {
    robot.waitFor(
        name + " has the keyboard", () -> WindowRobot.focused().filter(name::equals).isPresent());
  }

  @Test
  void theTree_itsContainerAndAnchors_areWorkedByKeys() {
    page("tree");
    tabTo("measure.bark");
    robot.type("1.3\n");
    robot.waitFor("the bark is taken", () -> tree().bark().equals(OptionalDouble.of(0.0013)));
    tabTo("measure.container.tied");
    tabTo("measure.anchor.add");
    int before = tree().setting().anchors().size();
    robot.keys(KeyEvent.VK_SPACE);
    robot.waitFor("it is added", () -> tree().setting().anchors().size() == before + 1);
  }

  @Test
  void segments_areTypedInTheFormAndInTheTable() {
    page("segments");
    int before = tree().segments().size();
    robot.keys(KeyEvent.VK_INSERT);
    waitForFocus("measure.add.azimuth");
    for (String value : List.of("40", "20", "50", "6", "5")) {
      robot.typeBlind(value + "\n");
    }
    robot.waitFor("it is added", () -> tree().segments().size() == before + 1);
    robot.keys(KeyEvent.VK_F4);
    waitForFocus("measure.table");
    JTable table = robot.find("measure.table", JTable.class);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_END);
    int row = WindowRobot.onEvents(table::getSelectedRow);
    int length = column(table, "length");
    int from = WindowRobot.onEvents(table::getSelectedColumn);
    for (int n = from; n != length; n += Integer.signum(length - from)) {
      robot.keys(n < length ? KeyEvent.VK_RIGHT : KeyEvent.VK_LEFT);
    }
    assertThat(WindowRobot.onEvents(table::getSelectedColumn)).isEqualTo(length);
    robot.type("61\n");
    String id = String.valueOf(table.getValueAt(row, 0));
    robot.waitFor("the length is taken", () -> Math.abs(length(id) - 0.061) < 1e-6);
  }

  private double length(String id) {
    var skeleton = new boughwright.modeller.tree.Skeleton(tree());
    return skeleton.length(skeleton.indexOf(id));
  }

  private static int column(JTable table, String words) {
    for (int n = 0; n < table.getColumnCount(); n++) {
      if (table.getColumnName(n).toLowerCase(java.util.Locale.ROOT).contains(words)) {
        return n;
      }
    }
    throw new AssertionError("no column of " + words);
  }

  @Test
  void woundsAndPhotos_areWorkedByKeys() {
    Segment first = tree().segments().get(0);
    page("wounds");
    tabTo("measure.wound.add");
    robot.keys(KeyEvent.VK_SPACE);
    tabTo("measure.wound.width");
    robot.type("7\n");
    robot.waitFor("the width is taken", () -> last().width() == 0.007);
    assertThat(last().segment()).isEqualTo(first.id());
    page("photos");
    tabTo("photo.add");
    robot.keys(KeyEvent.VK_SPACE);
    robot.find("photo.chooser");
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("the files are gone", () -> !robot.isThere("photo.chooser"));
    waitForFocus("photo.add");
  }

  private Wound last() {
    List<Wound> all = tree().wounds();
    return all.get(all.size() - 1);
  }
}
