// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.work.Selection;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Point;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JSlider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A hand on the mouse: hovering, the other buttons, the pose slider, and what it then sees. */
@OnScreen
class CanvasHandTest {
  private static final Skeleton SKELETON = new Skeleton(CanvasWindow.DOCUMENT.tree());
  private CanvasWindow window;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    WindowRobot.requireDisplay();
    window = new CanvasWindow();
    robot = window.robot;
  }

  @AfterEach
  void close() {
    if (window != null) {
      window.close();
    }
  }

  private static Point3 middle(String segment) {
    return SKELETON.point(SKELETON.indexOf(segment), 0.6);
  }

  private BufferedImage painted() {
    Component view = window.view();
    return WindowRobot.onEvents(
        () -> {
          BufferedImage image =
              new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
          view.paint(image.getGraphics());
          return image;
        });
  }

  @Test
  void mouseOverABranch_writesItsNameAndCalipersBesideIt() {
    Point branch = window.at(middle("b1"));
    robot.moveTo(window.view(), branch.x, branch.y);
    robot.waitFor("a label", () -> !window.canvas.hoveredWords().isEmpty());
    assertThat(WindowRobot.onEvents(window.canvas::hoveredWords)).startsWith("b1  ").endsWith("mm");
    int plate = painted().getRGB(branch.x + 18 + 3, branch.y + 18 + 12) & 0xFFFFFF;
    int raised = WindowRobot.onEvents(() -> Theme.colour(Shade.RAISED).getRGB()) & 0xFFFFFF;
    assertThat(distance(plate, raised)).as("the plate under the words").isLessThan(40);
    robot.moveTo(window.view(), 12, 12);
    robot.waitFor("no label", () -> window.canvas.hoveredWords().isEmpty());
    assertThat(WindowRobot.onEvents(window.canvas::hoveredWords)).isEmpty();
  }

  private static int distance(int one, int other) {
    int sum = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      sum += Math.abs((one >> shift & 0xFF) - (other >> shift & 0xFF));
    }
    return sum;
  }

  @ParameterizedTest
  @ValueSource(ints = {InputEvent.BUTTON2_DOWN_MASK, InputEvent.BUTTON3_DOWN_MASK})
  void dragWithAnotherButton_movesTheTree_andDoesNotTurnIt(int button) throws AWTException {
    Point before = window.at(middle("t1"));
    double azimuth = WindowRobot.onEvents(window.canvas::azimuth);
    robot.moveTo(window.view(), 60, 60);
    Robot hand = new Robot();
    hand.mousePress(button);
    robot.moveTo(window.view(), 80, 70);
    robot.moveTo(window.view(), 110, 80);
    hand.mouseRelease(button);
    robot.waitFor("the tree elsewhere", () -> window.at(middle("t1")).x >= before.x + 45);
    window.settle();
    Point after = window.at(middle("t1"));
    double clickSlack = 5;
    assertThat((double) after.x - before.x).isCloseTo(50, within(clickSlack));
    assertThat((double) after.y - before.y).isCloseTo(20, within(clickSlack));
    assertThat(WindowRobot.onEvents(window.canvas::azimuth)).isEqualTo(azimuth);
    assertThat(WindowRobot.onEvents(() -> window.work.selection().segments())).isEmpty();
  }

  @Test
  void poseSlider_byMouse_goesBackToTheTreeAsMeasured() {
    window.answer();
    JSlider slider = robot.find("canvas.pose", JSlider.class);
    int middle = slider.getHeight() / 2;
    robot.drag(slider, new Point(slider.getWidth() - 12, middle), new Point(4, middle));
    robot.waitFor("as measured", () -> slider.getValue() == 0);
    assertThat(robot.words("canvas.pose-words")).isEqualTo("as measured");
  }

  private int cover(Point at) {
    return WindowRobot.onEvents(
        () ->
            ((CanvasView) window.view()).picture().orElseThrow().wood().getRGB(at.x, at.y) >>> 24);
  }

  private void run(String command) {
    WindowRobot.doOnEvents(
        () ->
            window.canvas.commands().stream()
                .filter(one -> one.id().equals(command))
                .findFirst()
                .orElseThrow()
                .run()
                .run());
    window.settle();
  }

  @Test
  void dimming_leavesAVeil_hidingNothing_isolatingOnlyWhatIsPicked() {
    Point branch = window.at(middle("b1"));
    Point trunk = window.at(middle("t1"));
    WindowRobot.doOnEvents(() -> window.work.select(Selection.of("b1")));
    window.settle();
    List<Integer> covers = new ArrayList<>(List.of(cover(branch)));
    for (String command : List.of("view.dim", "view.show-all", "view.hide", "view.show-all")) {
      run(command);
      covers.add(cover(branch));
    }
    assertThat(covers.get(0)).as("as it is").isGreaterThan(250);
    assertThat(covers.get(1)).as("dimmed").isBetween(20, 160);
    assertThat(covers.get(3)).as("hidden").isZero();
    assertThat(covers.get(4)).as("shown again").isGreaterThan(250);
    run("view.isolate");
    assertThat(cover(branch)).as("isolated").isGreaterThan(250);
    assertThat(cover(trunk)).as("the trunk while a branch is isolated").isLessThan(160);
  }

  @Test
  void viewFromAbove_isDrawnWellWithItsWords_afterGlidingThere() {
    window.answer();
    WindowRobot.doOnEvents(() -> window.canvas.setSmooth(true));
    run("view.top");
    CanvasView view = (CanvasView) window.view();
    assertThat(WindowRobot.onEvents(() -> view.picture().orElseThrow().words())).isPresent();
    assertThat(WindowRobot.onEvents(window.canvas::elevation)).isCloseTo(Math.PI / 2, within(1e-6));
  }

  @Test
  void measured_goesOverCalmly_toTheTreeWithoutItsPlan_andBack() {
    window.answer();
    Point tip = window.at(SKELETON.end(SKELETON.indexOf("l4")));
    WindowRobot.doOnEvents(
        () -> {
          window.canvas.setSmooth(true);
          window.canvas.measured(true);
        });
    window.settle();
    assertThat(WindowRobot.onEvents(() -> window.canvas.hit(tip.x, tip.y + 3))).isPresent();
    assertThat(WindowRobot.onEvents(() -> robot.isThere("canvas.pose"))).isFalse();
    WindowRobot.doOnEvents(() -> window.canvas.measured(false));
    window.settle();
    assertThat(robot.words("canvas.pose-words")).isEqualTo("bent, day 28");
  }
}
