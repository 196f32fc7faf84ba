// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.viewer.command.Ran;
import boughwright.viewer.window.Parts;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.look.Reading;
import boughwright.viewer.window.shell.TestDesk;
import boughwright.viewer.window.work.Workspace;
import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JButton;

/** The window of the program with a tree file of its own in it, at the mode that pulls. */
final class PullFrame implements AutoCloseable {
  private static final Path HORNBEAM = Path.of("../examples/hedge-hornbeam.tree.json");
  private static final int PULL = 3;
  private static final int COMPARE = 4;

  final WindowRobot robot;
  final Workspace workspace;
  final TestDesk desk;
  final Path file;

  PullFrame(Path folder) {
    this(folder, HORNBEAM);
  }

  /** With a copy of a tree file of its own. */
  PullFrame(Path folder, Path tree) {
    WindowRobot.requireDisplay();
    file = folder.resolve("mine.tree.json");
    try {
      Files.copy(tree, file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    desk = TestDesk.whole(folder.resolve("home"));
    robot = desk.robot;
    workspace = desk.window.workspace();
    desk.resize(1600, 1000);
    desk.openFile(file);
    robot.waitFor("the file is open", () -> workspace.file().isPresent());
    choose(PULL);
  }

  private void choose(int mode) {
    WindowRobot.doOnEvents(() -> desk.window.choose(mode));
    robot.settle();
  }

  void compare() {
    choose(COMPARE);
  }

  PullPanel panel() {
    return (PullPanel) WindowRobot.onEvents(() -> desk.window.parts().panels().get(PULL));
  }

  ComparePanel comparison() {
    return (ComparePanel) WindowRobot.onEvents(() -> desk.window.parts().panels().get(COMPARE));
  }

  Canvas canvas() {
    return WindowRobot.onEvents(() -> desk.window.parts().canvas());
  }

  Document document() {
    return WindowRobot.onEvents(workspace::document);
  }

  Plan plan() {
    return WindowRobot.onEvents(() -> workspace.plan().orElseThrow());
  }

  /** The end of a segment as measured. */
  Point3 end(String segment) {
    return document().tree().segments().stream()
        .filter(one -> one.id().equals(segment))
        .findFirst()
        .orElseThrow()
        .end();
  }

  /** Where a point of the tree appears on the canvas, once the wood there is drawn. */
  Point pixel(Point3 point) {
    Canvas canvas = canvas();
    robot.waitFor(
        "the wood is drawn",
        () -> canvas.hit(canvas.project(point).x(), canvas.project(point).y()).isPresent());
    return seen(point);
  }

  /** Where a point appears on the canvas. */
  Point seen(Point3 point) {
    Canvas canvas = canvas();
    return WindowRobot.onEvents(
        () ->
            new Point(
                (int) Math.round(canvas.project(point).x()),
                (int) Math.round(canvas.project(point).y())));
  }

  /** Drags a point of the tree by so many pixels, and waits until that is settled. */
  void pull(Point3 from, int right, int down) {
    Point at = pixel(from);
    robot.drag(canvas().component(), at, new Point(at.x + right, at.y + down));
    settled();
  }

  void settled() {
    JButton add = robot.find("pull.add", JButton.class);
    robot.patiently("the pull has settled", add::isEnabled);
  }

  void fill(String name, String text) {
    robot.reachAndFill(name, text);
  }

  void click(String name) {
    robot.reachAndClick(name);
  }

  /** Adds what is pulled to the plan and waits until all of it is worked out. */
  void added(int proposals) {
    click("pull.add");
    robot.waitFor(
        "the plan has it",
        () -> workspace.plan().filter(one -> one.proposals().size() == proposals).isPresent());
    worked();
  }

  void worked() {
    PullPanel panel = panel();
    robot.patiently(
        "all is worked out",
        () -> workspace.plan().filter(one -> panel.trials().of(one).isPresent()).isPresent());
    robot.settle();
  }

  /** What a reading shows. */
  String reading(String name) {
    return robot.find(name, Reading.class).words();
  }

  /** A number as it is shown. */
  static String shown(double value, int decimals, String unit) {
    String number = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toString();
    return (number + " " + unit).strip();
  }

  /** Strain, verdict and kink are those that {@code bend} tells of the saved file. */
  void bendingIs(JsonNode trial) {
    assertThat(reading("pull.strain"))
        .isEqualTo(shown(100 * trial.get("peak").get("bending_strain").asDouble(), 2, "%"));
    assertThat(robot.words("pull.verdict"))
        .contains(trial.get("verdict").get("words").asText())
        .contains(trial.get("verdict").get("reason").asText());
    assertThat(told()).contains("Kink on the inside: " + reading("pull.kink") + " ");
  }

  /** What {@code bend} says of the saved file, in one line. */
  String told() {
    return Ran.command("bend", file, "--plan", "mine").out().replaceAll("\\s+", " ");
  }

  /** Whether a reading shows some words; asked on the event thread. */
  boolean isRead(String name, String words) {
    return Parts.all(desk.window).stream()
        .anyMatch(
            part ->
                part instanceof Reading reading
                    && name.equals(reading.getName())
                    && reading.words().equals(words));
  }

  /** Saves by key, and gives what {@code bend --json} says of a plan of the file. */
  JsonNode saved(String plan) {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    robot.waitFor("it is saved", () -> workspace.history().isSaved());
    return bend(plan);
  }

  JsonNode bend(String plan) {
    Ran ran = Ran.command("bend", file, "--plan", plan, "--json");
    if (ran.code() != 0) {
      throw new AssertionError(ran.err());
    }
    return ran.json().get("trials").get(0);
  }

  Document read() throws InputException {
    return TreeFiles.read(file).document();
  }

  @Override
  public void close() {
    TestDesk.closeAll();
  }
}
