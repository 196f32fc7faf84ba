// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.Outcome;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.InventedCourses;
import boughwright.viewer.scene.Visibility;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.Parts;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.work.Selection;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JSlider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A person at the canvas, with a real mouse and real keys. */
@OnScreen
class TreeCanvasTest {
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

  private double azimuth() {
    return WindowRobot.onEvents(window.canvas::azimuth);
  }

  private List<String> picked() {
    return WindowRobot.onEvents(() -> window.work.selection().segments());
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

  private void focus() {
    Component view = window.view();
    WindowRobot.doOnEvents(view::requestFocusInWindow);
    robot.waitFor("the keyboard on the tree", view::isFocusOwner);
  }

  @Test
  void drag_turnsTheTree_leftAndRightAndUpAndDown() {
    double before = azimuth();
    robot.drag(window.view(), new Point(60, 60), new Point(160, 90));
    robot.waitFor("another azimuth", () -> window.canvas.azimuth() != before);
    window.settle();
    assertThat(azimuth()).isNotEqualTo(before);
    assertThat(WindowRobot.onEvents(window.canvas::elevation)).isPositive();
  }

  @Test
  void click_picksTheSegment_controlAddsAnother_besideTheTreeClears() throws Exception {
    Point trunk = window.at(middle("t1"));
    robot.click(window.view(), trunk.x, trunk.y);
    robot.waitFor("the trunk picked", () -> !window.work.selection().segments().isEmpty());
    assertThat(picked()).containsExactly("t1");
    Robot hand = new Robot();
    Point branch = window.at(middle("b1"));
    hand.keyPress(KeyEvent.VK_CONTROL);
    robot.click(window.view(), branch.x, branch.y);
    hand.keyRelease(KeyEvent.VK_CONTROL);
    robot.waitFor("two picked", () -> window.work.selection().segments().size() == 2);
    assertThat(picked()).containsExactly("t1", "b1");
    robot.click(window.view(), 12, 12);
    robot.waitFor("nothing picked", () -> window.work.selection().segments().isEmpty());
    assertThat(picked()).isEmpty();
  }

  @Test
  void escape_withoutATool_letsGoOfWhatIsPicked() {
    WindowRobot.doOnEvents(() -> window.work.select(Selection.of("t1")));
    focus();
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("nothing picked", () -> window.work.selection().segments().isEmpty());
    assertThat(picked()).isEmpty();
  }

  @Test
  void wheel_zooms_andWhatIsUnderTheMouseStays() throws Exception {
    Point3 under = WindowRobot.onEvents(() -> window.canvas.beside(middle("t1"), 500, 150));
    robot.moveTo(window.view(), 500, 150);
    Point3 far = middle("b1");
    Point before = window.at(far);
    Robot hand = new Robot();
    hand.mouseWheel(-3);
    robot.waitFor("a larger tree", () -> !before.equals(window.at(far)));
    window.settle();
    assertThat(window.at(under).distance(500, 150)).isLessThan(1.5);
    assertThat(window.at(far).distance(500, 150)).isGreaterThan(before.distance(500, 150));
  }

  @Test
  void shiftDrag_movesTheTreeWithTheHand() throws Exception {
    Point before = window.at(middle("t1"));
    double azimuth = azimuth();
    Robot hand = new Robot();
    hand.keyPress(KeyEvent.VK_SHIFT);
    robot.drag(window.view(), new Point(60, 60), new Point(110, 80));
    hand.keyRelease(KeyEvent.VK_SHIFT);
    robot.waitFor("the tree elsewhere", () -> !before.equals(window.at(middle("t1"))));
    window.settle();
    Point after = window.at(middle("t1"));
    double clickSlack = 5;
    assertThat((double) after.x - before.x).isCloseTo(50, within(clickSlack));
    assertThat((double) after.y - before.y).isCloseTo(20, within(clickSlack));
    assertThat(azimuth()).isEqualTo(azimuth);
  }

  @Test
  void arrowKeys_turnTheTree_digitsGoToTheSides() {
    focus();
    double front = azimuth();
    robot.keys(KeyEvent.VK_RIGHT);
    robot.waitFor("a turned tree", () -> window.canvas.azimuth() != front);
    robot.keys(KeyEvent.VK_3);
    robot.waitFor(
        "the left side", () -> Math.cos(window.canvas.azimuth() - front - Math.PI / 2) > 1 - 1e-9);
    robot.keys(KeyEvent.VK_5);
    robot.waitFor("the view from above", () -> window.canvas.elevation() > Math.PI / 2 - 1e-6);
    robot.keys(KeyEvent.VK_1);
    robot.waitFor("the front", () -> Math.abs(window.canvas.azimuth() - front) < 1e-9);
    assertThat(WindowRobot.onEvents(window.canvas::elevation)).isCloseTo(0, within(1e-9));
  }

  @Test
  void poseSlider_byKeyboard_goesFromBentToMeasured_andSaysBetween() {
    window.answer();
    JSlider slider = robot.find("canvas.pose", JSlider.class);
    WindowRobot.doOnEvents(slider::requestFocusInWindow);
    robot.waitFor("the keyboard on the slider", slider::isFocusOwner);
    assertThat(robot.words("canvas.pose-words")).isEqualTo("bent, day 28");
    robot.keys(KeyEvent.VK_PAGE_DOWN);
    robot.waitFor("day 14", () -> slider.getValue() == 2 * PoseSlider.STEPS);
    assertThat(robot.words("canvas.pose-words")).isEqualTo("day 14");
    robot.keys(KeyEvent.VK_LEFT);
    robot.waitFor("a place between", () -> slider.getValue() == 2 * PoseSlider.STEPS - 1);
    assertThat(robot.words("canvas.pose-words")).isEqualTo("between day 0 and day 14");
    robot.keys(KeyEvent.VK_HOME);
    robot.waitFor("as measured", () -> slider.getValue() == 0);
    assertThat(robot.words("canvas.pose-words")).isEqualTo("as measured");
  }

  @Test
  void hit_followsThePoseThatIsShown() {
    window.answer();
    String tip = "l3";
    Point measured = window.at(middle(tip));
    Optional<Hit> bent = WindowRobot.onEvents(() -> window.canvas.hit(measured.x, measured.y));
    assertThat(bent.map(hit -> hit.spot().segment())).isNotEqualTo(Optional.of(tip));
    WindowRobot.doOnEvents(() -> robotless(0));
    Optional<Hit> still = WindowRobot.onEvents(() -> window.canvas.hit(measured.x, measured.y));
    assertThat(still.map(hit -> hit.spot().segment())).isEqualTo(Optional.of(tip));
  }

  private void robotless(int value) {
    for (Component part : Parts.all(window.canvas.component())) {
      if (part instanceof JSlider slider) {
        slider.setValue(value);
      }
    }
  }

  @Test
  void hiding_takesTheBranchAway_isolatingAllOthers_showAllBringsThemBack() {
    WindowRobot.doOnEvents(() -> window.work.select(Selection.of("b1")));
    Point branch = window.at(middle("b1"));
    run("view.hide");
    assertThat(WindowRobot.onEvents(() -> window.canvas.hit(branch.x, branch.y))).isEmpty();
    run("view.show-all");
    assertThat(
            WindowRobot.onEvents(() -> window.canvas.hit(branch.x, branch.y))
                .map(hit -> hit.spot().segment()))
        .contains("b1");
    run("view.isolate");
    Point trunk = window.at(middle("t1"));
    assertThat(WindowRobot.onEvents(() -> window.canvas.hit(trunk.x, trunk.y))).isEmpty();
    assertThat(WindowRobot.onEvents(() -> window.canvas.looks().visibility().of("b1")))
        .isEqualTo(Visibility.Way.SHOWN);
  }

  @Test
  void tool_takesTheDragItWants_escapeTellsItToForget() {
    List<String> heard = new ArrayList<>();
    WindowRobot.doOnEvents(() -> window.canvas.use(new Recorder(heard)));
    double before = azimuth();
    robot.drag(window.view(), new Point(200, 60), new Point(260, 90));
    robot.waitFor("the tool has let go", () -> heard.contains("released"));
    assertThat(heard).containsSubsequence("pressed", "dragged", "released");
    assertThat(azimuth()).as("not turned").isEqualTo(before);
    assertThat(robot.words("canvas.hint")).isEqualTo("Drag to record");
    focus();
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("the tool has forgotten", () -> heard.contains("cancelled"));
    robot.drag(window.view(), new Point(50, 60), new Point(110, 60));
    robot.waitFor("a turned tree", () -> window.canvas.azimuth() != before);
    assertThat(azimuth()).as("a drag it does not take turns").isNotEqualTo(before);
  }

  /** Takes what begins right of 100. */
  private record Recorder(List<String> heard) implements CanvasTool {
    @Override
    public String hint() {
      return "Drag to record";
    }

    @Override
    public boolean pressed(Pointer pointer) {
      heard.add("pressed");
      return pointer.x() > 100;
    }

    @Override
    public void dragged(Pointer pointer) {
      heard.add("dragged");
    }

    @Override
    public void released(Pointer pointer) {
      heard.add("released");
    }

    @Override
    public void moved(Pointer pointer) {
      heard.add("moved");
    }

    @Override
    public void cancelled() {
      heard.add("cancelled");
    }

    @Override
    public void paint(Graphics2D pen) {
      pen.drawLine(0, 0, 1, 1);
    }
  }

  @Test
  void preview_showsThePoseOfTheHand_untilItIsTakenBack() {
    Point3 place = middle("l3");
    Point at = window.at(place);
    assertThat(WindowRobot.onEvents(() -> window.canvas.hit(at.x, at.y))).isPresent();
    var bent = InventedCourses.bent(CanvasWindow.DOCUMENT.tree(), CanvasWindow.PLAN, 1);
    WindowRobot.doOnEvents(
        () -> window.canvas.preview(Optional.of(Preview.ofHand(CanvasWindow.PLAN, bent))));
    window.settle();
    assertThat(
            WindowRobot.onEvents(() -> window.canvas.hit(at.x, at.y))
                .map(hit -> hit.spot().segment()))
        .isNotEqualTo(Optional.of("l3"));
    WindowRobot.doOnEvents(() -> window.canvas.preview(Optional.empty()));
    window.settle();
    assertThat(
            WindowRobot.onEvents(() -> window.canvas.hit(at.x, at.y))
                .map(hit -> hit.spot().segment()))
        .contains("l3");
  }

  @Test
  void trialThatDoesNotHold_saysWhy_andTheTreeStaysAsMeasured() {
    window.answer(
        Bending.failed(CanvasWindow.PLAN, new Outcome(false, false, 0, "l1; it held up to 60 %")),
        Optional.empty());
    assertThat(robot.words("canvas.remark"))
        .contains("No pose found")
        .contains("held up to 60 %")
        .contains("Shown as measured");
    assertThat(robot.isThere("canvas.pose")).isFalse();
  }

  @Test
  void accessibleDescription_saysWhatIsShownAndPicked() {
    window.answer();
    WindowRobot.doOnEvents(() -> window.work.select(new Selection(List.of("b1", "t1"))));
    String told =
        WindowRobot.onEvents(() -> window.view().getAccessibleContext().getAccessibleDescription());
    assertThat(told).contains("bent, day 28").contains("Picked: b1, t1");
  }

  /** What the graphics say of themselves is checked where they are opened. */
  @Test
  void withoutGraphics_oneMessageStandsInForTheTree_andTheRestGoesOn() {
    window.answer();
    WindowRobot.doOnEvents(
        () -> window.canvas.cannotDraw("no OpenGL 3.3. Install Mesa's software drawing"));
    assertThat(robot.words("canvas.message"))
        .contains("cannot be drawn")
        .contains("Install Mesa")
        .contains("command line");
    WindowRobot.doOnEvents(() -> robotless(0));
    assertThat(robot.words("canvas.pose-words")).isEqualTo("as measured");
    WindowRobot.doOnEvents(() -> window.work.select(Selection.of("b1")));
    assertThat(
            WindowRobot.onEvents(
                () -> window.view().getAccessibleContext().getAccessibleDescription()))
        .contains("Picked: b1");
  }

  @Test
  void lookPanel_boxesAndButtons_changeWhatIsShown() {
    LookPanel panel = WindowRobot.onEvents(() -> new LookPanel(window.canvas));
    javax.swing.JCheckBox plumb = (javax.swing.JCheckBox) part(panel, "look.plumb");
    javax.swing.AbstractButton hide = (javax.swing.AbstractButton) part(panel, "look.hide");
    assertThat(hide.isEnabled()).as("nothing is picked").isFalse();
    WindowRobot.doOnEvents(plumb::doClick);
    assertThat(WindowRobot.onEvents(window.canvas::looks).has(Looks.Extra.PLUMB)).isTrue();
    WindowRobot.doOnEvents(() -> window.work.select(Selection.of("b1")));
    assertThat(hide.isEnabled()).isTrue();
    WindowRobot.doOnEvents(hide::doClick);
    assertThat(WindowRobot.onEvents(() -> window.canvas.looks().visibility().of("b1")))
        .isEqualTo(Visibility.Way.HIDDEN);
    WindowRobot.doOnEvents(() -> window.canvas.show(Looks.Extra.PLUMB, false));
    assertThat(plumb.isSelected()).as("follows the canvas").isFalse();
  }

  private static Component part(LookPanel panel, String name) {
    return Parts.all(panel.component()).stream()
        .filter(one -> name.equals(one.getName()))
        .findFirst()
        .orElseThrow();
  }
}
