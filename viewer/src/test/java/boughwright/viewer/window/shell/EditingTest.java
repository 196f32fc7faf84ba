// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.work.Background;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Undo, units, help and work, in the window round the tree. */
@OnScreen
class EditingTest {
  @TempDir Path folder;

  private TestDesk test;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    WindowRobot.requireDisplay();
    test = new TestDesk(folder.resolve("home"), new PlainParts());
    robot = test.robot;
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private String name() {
    return WindowRobot.onEvents(() -> test.window.workspace().document().tree().name());
  }

  @Test
  void undo_namesWhatItTakesBack() {
    String before = name();
    test.change("Other");
    robot.menu("e");
    JMenuItem undo = robot.find("menu.edit.undo", JMenuItem.class);
    String step =
        WindowRobot.onEvents(() -> test.window.workspace().history().undoName().orElseThrow());
    assertThat(undo.getText()).isEqualTo("Undo " + step);
    robot.click(undo);
    robot.waitFor("the old name is back", () -> name().equals(before));
  }

  @Test
  void keys_undoAndRedo() {
    String before = name();
    test.change("Other");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    assertThat(name()).isEqualTo(before);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
    assertThat(name()).isEqualTo("Other");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_Z);
    assertThat(name()).isEqualTo("Other");
  }

  @Test
  void inches_areShownAtOnceAndKept() {
    assertThat(robot.words("plain.look.length")).isEqualTo("25.4");
    robot.menu("vui");
    robot.waitFor("the field shows inches", () -> robot.words("plain.look.length").equals("1"));
    robot.fill("plain.look.length", "1 1/2 in");
    assertThat(robot.words("plain.look.length")).isEqualTo("1.5");
    assertThat(test.desk.settings().units().length().symbol()).isEqualTo("in");
  }

  @Test
  void selectAll_picksEverySegment() {
    robot.keys(KeyEvent.VK_F6);
    WindowRobot.doOnEvents(() -> test.window.commands().run("edit.select-all"));
    int all =
        WindowRobot.onEvents(() -> test.window.workspace().document().tree().segments().size());
    int picked = WindowRobot.onEvents(() -> test.window.workspace().selection().segments().size());
    assertThat(picked).isEqualTo(all);
  }

  @Test
  void altAndANumber_choosesTheMode() {
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_2);
    robot.waitFor("Measure is shown", () -> robot.isThere("plain.measure.length"));
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_1);
    robot.waitFor("Look is shown", () -> robot.isThere("plain.look.length"));
  }

  @Test
  void theKeysPage_namesEveryCommandWithAKey() {
    robot.menu("hk");
    robot.find("keys");
    List<String> named =
        WindowRobot.onEvents(
            () ->
                test.window.commands().all().stream()
                    .filter(command -> command.key().isPresent())
                    .map(Command::name)
                    .toList());
    assertThat(named).hasSizeGreaterThan(10);
    for (String name : named) {
      robot.find(
          name,
          part -> part instanceof javax.swing.JTextArea text && text.getText().startsWith(name));
    }
  }

  @Test
  void f1_explainsTheNumberInFocus() {
    robot.click(robot.find("plain.look.reading"));
    robot.keys(KeyEvent.VK_F1);
    robot.find("explanation");
  }

  @Test
  void runningWork_isShownAndCanBeStopped() {
    Background.Job job =
        WindowRobot.onEvents(
            () ->
                test.window
                    .jobs()
                    .start(
                        "Trying plan a",
                        progress -> {
                          progress.part(0.5);
                          while (true) {
                            progress.part(0.6);
                            Thread.sleep(1);
                          }
                        },
                        result -> {}));
    assertThat(robot.words("status.work")).isEqualTo("Trying plan a");
    robot.click("status.stop");
    robot.waitFor("the work is gone", () -> !robot.isThere("status.work"));
    assertThat(WindowRobot.onEvents(job::isRunning)).isFalse();
  }

  @Test
  void aDefect_isToldInTheStatusLine() {
    WindowRobot.doOnEvents(() -> test.desk.defect(new IllegalStateException("no such thing")));
    assertThat(robot.words("status.notice"))
        .startsWith("Not done: this is a defect of Boughwright")
        .contains("no such thing");
  }

  @Test
  void theTour_goesThroughFiveStepsByKeyboard() {
    robot.menu("ht");
    for (int step = 1; step <= 5; step++) {
      String count = step + " of 5";
      robot.waitFor(count, () -> robot.words("tour.count").equals(count));
      robot.keys(KeyEvent.VK_SPACE);
    }
    robot.waitFor("it is over", () -> !robot.isThere("tour.card"));
    assertThat(test.desk.settings().tourSeen()).isTrue();
  }

  @Test
  void theTour_isLeftWithEscape() {
    robot.menu("ht");
    robot.find("tour.card");
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("it is over", () -> !robot.isThere("tour.card"));
    assertThat(test.window.isShowing()).isTrue();
  }
}
