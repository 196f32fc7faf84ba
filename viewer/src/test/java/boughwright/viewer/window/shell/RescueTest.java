// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.file.Recovery;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed in the middle of the work, and started again. */
@OnScreen
class RescueTest {
  @TempDir Path folder;

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private Path home() {
    return folder.resolve("home");
  }

  /** Edits a tree until it is killed. */
  public static void main(String[] args) {
    Path home = Path.of(args[0]);
    Path file = Path.of(args[1]);
    TestDesk test = new TestDesk(home, new PlainParts());
    WindowRobot.doOnEvents(() -> FileCommands.openFile(test.window, file));
    WindowRobot.doOnEvents(() -> edit(test.window));
    test.robot.waitFor("it is kept", () -> isKept(home.resolve("recovery")));
    System.out.println("kept");
    test.robot.waitFor("it is killed", () -> false);
  }

  private static void edit(MainWindow window) {
    window.workspace().edit(TreeEdits.name("Half done"));
    window.workspace().edit(SegmentEdits.split("b1", 0.4, "half"));
  }

  private static boolean isKept(Path folder) throws java.io.IOException {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (var files = Files.list(folder)) {
      return files.anyMatch(
          file -> file.getFileName().toString().endsWith(".kept") && holdsBoth(file));
    }
  }

  private static boolean holdsBoth(Path file) {
    try {
      return Files.readString(file).contains("Half done");
    } catch (java.io.IOException e) {
      return false;
    }
  }

  /** What is on disk after the kill, with the file it was opened from. */
  private Path killed() throws Exception {
    WindowRobot.requireDisplay();
    Path file = folder.resolve("bench.tree.json");
    TreeFiles.write(Example.LARCH.read().document(), file);
    Child child =
        Child.start(home(), List.of(), RescueTest.class, home().toString(), file.toString());
    assertThat(child.line()).isEqualTo("kept");
    child.kill();
    return file;
  }

  private Document halfDone() throws Exception {
    Document named = TreeEdits.name("Half done").of(Example.LARCH.read().document());
    return SegmentEdits.split("b1", 0.4, "half").of(named);
  }

  private TestDesk startAgain() {
    TestDesk test = new TestDesk(home(), new PlainParts());
    SwingUtilities.invokeLater(() -> new Rescue(test.desk, test.window).offer());
    return test;
  }

  @Test
  void afterAKill_theWorkIsRecoveredEqual_andTheFileIsAsItWas() throws Exception {
    Path file = killed();
    TestDesk test = startAgain();
    test.robot.find("question");
    test.robot.click("answer.recover");
    test.robot.waitFor(
        "it is open", () -> test.window.workspace().document().tree().name().equals("Half done"));
    assertThat(WindowRobot.onEvents(() -> test.window.workspace().document()))
        .isEqualTo(halfDone());
    assertThat(WindowRobot.onEvents(() -> test.window.workspace().file())).contains(file);
    assertThat(WindowRobot.onEvents(test.window::getTitle)).endsWith("not saved");
    assertThat(TreeFiles.read(file).document()).isEqualTo(Example.LARCH.read().document());
  }

  @Test
  void leftForLater_itIsOfferedAgain() throws Exception {
    killed();
    TestDesk test = startAgain();
    test.robot.find("question");
    test.robot.click("answer.later");
    test.robot.waitFor("the question is gone", () -> !test.robot.isThere("question"));
    assertThat(Recovery.leftBehind(home().resolve("recovery"))).hasSize(1);
  }

  @Test
  void discarding_asksAgain_andThenItIsGone() throws Exception {
    killed();
    TestDesk test = startAgain();
    test.robot.find("question");
    test.robot.click("answer.discard");
    test.robot.click("answer.keep");
    test.robot.waitFor("the question is gone", () -> !test.robot.isThere("question"));
    assertThat(Recovery.leftBehind(home().resolve("recovery"))).hasSize(1);
    SwingUtilities.invokeLater(() -> new Rescue(test.desk, test.window).offer());
    test.robot.click("answer.discard");
    test.robot.find("answer.keep");
    test.robot.click("answer.discard");
    test.robot.waitFor("the question is gone", () -> !test.robot.isThere("question"));
    assertThat(Recovery.leftBehind(home().resolve("recovery"))).isEmpty();
  }

  @Test
  void closingWithoutSaving_keepsNothing() throws Exception {
    WindowRobot.requireDisplay();
    TestDesk test = new TestDesk(home(), new PlainParts());
    test.change("Given up");
    test.robot.waitFor("it is kept", () -> Files.isDirectory(home().resolve("recovery")));
    SwingUtilities.invokeLater(() -> test.desk.close(test.window));
    test.robot.click("answer.discard");
    test.desk.await();
    try (var left = Files.list(home().resolve("recovery"))) {
      assertThat(left).isEmpty();
    }
  }
}
