// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.Parts;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.work.Selection;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window with all that is in it, as a person works it. */
@OnScreen
class WholeWindowTest {
  private static final List<String> PAGES =
      List.of("tree", "segments", "table", "wounds", "photos");
  private static final Pattern METRIC = Pattern.compile("(?<![A-Za-z(])(mm|N)(?![A-Za-z])");

  @TempDir Path folder;

  private TestDesk test;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    Graphics.require();
    test = new TestDesk(folder.resolve("home"), new OwnParts());
    robot = test.robot;
    test.resize(1600, 1000);
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private Document document() {
    return WindowRobot.onEvents(() -> test.window.workspace().document());
  }

  private void mode(int n) {
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_0 + n);
    robot.waitFor("mode " + n, () -> test.window.mode() == n - 1);
  }

  private void toTree() {
    Component view = robot.find("canvas.view");
    WindowRobot.doOnEvents(view::requestFocusInWindow);
    robot.waitFor("the tree has the keyboard", view::isFocusOwner);
  }

  private Path opened() throws Exception {
    Path file = folder.resolve("bench.tree.json");
    TreeFiles.write(Example.HORNBEAM.read().document(), file);
    WindowRobot.doOnEvents(() -> FileCommands.openFile(test.window, file));
    return file;
  }

  private byte[] saved(Path file) throws Exception {
    toTree();
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    robot.waitFor("it is saved", () -> test.window.workspace().history().isSaved());
    return Files.readAllBytes(file);
  }

  @Test
  void fiftyEdits_areTakenBackToTheByte_andDoneAgain() throws Exception {
    Path file = opened();
    byte[] start = Files.readAllBytes(file);
    mode(2);
    Random random = new Random(5);
    for (int n = 0; n < 50; n++) {
      Document before = document();
      boolean typed = n % 10 == 3;
      if (typed) {
        type(random);
      }
      while (document().equals(before)) {
        Edit edit = any(random, document());
        WindowRobot.doOnEvents(() -> test.window.workspace().edit(edit));
      }
    }
    byte[] end = saved(file);
    assertThat(end).isNotEqualTo(start);
    robot.keysAgain(50, KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    robot.waitFor(
        "all is taken back", () -> test.window.workspace().history().undoName().isEmpty());
    assertThat(saved(file)).isEqualTo(start);
    robot.keysAgain(50, KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
    robot.waitFor(
        "all is done again", () -> test.window.workspace().history().redoName().isEmpty());
    assertThat(saved(file)).isEqualTo(end);
  }

  /** An edit by keyboard in a form. */
  private void type(Random random) {
    robot.click("measure.page.tree");
    robot.fill("measure.bark", (5 + random.nextInt(90)) / 100.0 + " mm");
    robot.settle();
  }

  private static Edit any(Random random, Document now) {
    List<Segment> segments = now.tree().segments();
    Segment one = segments.get(random.nextInt(segments.size()));
    double part = 0.2 + 0.6 * random.nextDouble();
    return switch (random.nextInt(8)) {
      case 0 -> SegmentEdits.split(one.id(), part, "s" + random.nextInt(100_000));
      case 1 ->
          SegmentEdits.setCalipers(
              one.id(), one.caliperStart() * (1 + part / 9), one.caliperEnd() * (1 + part / 9));
      case 2 -> SegmentEdits.setBark(one.id(), OptionalDouble.of(part / 5_000));
      case 3 -> SegmentEdits.setKind(one.id(), random.nextBoolean() ? Kind.SACRIFICE : Kind.BRANCH);
      case 4 -> SegmentEdits.rename(one.id(), "r" + random.nextInt(100_000));
      case 5 -> TreeEdits.name("Bench tree " + random.nextInt(1_000));
      case 6 -> PlanEdits.front(now.plans().get(0).id(), OptionalDouble.of(6 * part));
      default -> PlanEdits.add(new PlanDraft("q" + random.nextInt(100_000)).build());
    };
  }

  @Test
  void inchesWithFractions_andCentimetresWithAComma_areUnderstood() {
    mode(2);
    robot.click("measure.page.segments");
    robot.fill("measure.add.length", "1 1/2 in");
    assertThat(robot.words("measure.add.length")).isEqualTo("38.1");
    robot.fill("measure.add.length", "3,5 cm");
    assertThat(robot.words("measure.add.length")).isEqualTo("35");
  }

  @Test
  void otherUnits_areShownEverywhere() {
    WindowRobot.doOnEvents(() -> test.window.workspace().select(Selection.of("b1")));
    assertThat(metric()).isNotEmpty();
    WindowRobot.doOnEvents(() -> test.window.commands().run("view.unit-in"));
    WindowRobot.doOnEvents(() -> test.window.commands().run("view.unit-lbf"));
    assertThat(metric()).isEmpty();
  }

  /** All that shows millimetres or newtons, in every mode and page. */
  private List<String> metric() {
    List<String> found = new ArrayList<>();
    for (int n = 1; n <= 5; n++) {
      mode(n);
      found.addAll(metricNow());
      if (n == 2) {
        for (String page : PAGES) {
          robot.click("measure.page." + page);
          found.addAll(metricNow());
        }
      }
      if (n == 3) {
        for (String page : List.of("roots", "structure", "apex", "front")) {
          robot.click("choose.page." + page);
          found.addAll(metricNow());
        }
      }
    }
    return found;
  }

  private List<String> metricNow() {
    return WindowRobot.onEvents(
        () ->
            Parts.all(test.window.getContentPane()).stream()
                .filter(Component::isShowing)
                .filter(part -> !"status.notice".equals(part.getName()))
                .flatMap(part -> words(part).stream())
                .filter(words -> METRIC.matcher(words).find())
                .toList());
  }

  private static List<String> words(Component part) {
    if (part instanceof JLabel label) {
      return List.of(String.valueOf(label.getText()));
    }
    if (part instanceof JTextComponent text) {
      return List.of(text.getText());
    }
    if (part instanceof JTable table) {
      List<String> cells = new ArrayList<>();
      for (int column = 0; column < table.getColumnCount(); column++) {
        cells.add(table.getColumnName(column));
        cells.add(String.valueOf(table.getValueAt(0, column)));
      }
      return cells;
    }
    return part instanceof AbstractButton button ? List.of(button.getText()) : List.of();
  }

  @Test
  void afterEveryDialog_theKeyboardIsWhereItWas() {
    WindowRobot.doOnEvents(() -> test.window.workspace().select(Selection.of("b1")));
    mode(2);
    robot.click("measure.page.segments");
    Map<String, String> dialogs = new TreeMap<>();
    dialogs.put("file.open", "file.chooser");
    dialogs.put("file.save-as", "file.chooser");
    dialogs.put("file.new", "new-tree");
    dialogs.put("file.examples", "start");
    dialogs.put("help.keys", "keys");
    dialogs.put("help.about", "about");
    dialogs.put("tree.split", "short");
    for (String part : List.of("measure.add.length", "canvas.view")) {
      dialogs.forEach((command, dialog) -> throughTheMenu(command, dialog, part));
    }
  }

  private void throughTheMenu(String command, String dialog, String part) {
    Component before = robot.find(part);
    WindowRobot.doOnEvents(before::requestFocusInWindow);
    robot.waitFor(part + " has the keyboard", before::isFocusOwner);
    javax.swing.SwingUtilities.invokeLater(() -> test.window.commands().run(command));
    Component there = robot.find(dialog);
    java.awt.Window own =
        there instanceof java.awt.Window itself
            ? itself
            : javax.swing.SwingUtilities.getWindowAncestor(there);
    robot.waitFor(dialog + " has the keyboard", own::isFocused);
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor(dialog + " is gone", () -> !robot.isThere(dialog));
    robot.waitFor(command + " gives the keyboard back to " + part, before::isFocusOwner);
  }

  @Test
  void afterADialogFromTheMenu_theKeyboardIsWhereItWas() {
    toTree();
    robot.menu("hk");
    robot.find("keys");
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("the page is gone", () -> !robot.isThere("keys"));
    robot.waitFor("the tree has it again", () -> robot.find("canvas.view").isFocusOwner());
  }

  @Test
  void largerText_growsTheWindowsParts_andUsualTextShrinksThemAgain() {
    for (int n = 1; n <= 5; n++) {
      mode(n);
      Map<String, Dimension> usual = sizes();
      use(TextSize.LARGEST);
      assertThat(sizes().get("tab.look").height).isGreaterThan(usual.get("tab.look").height);
      assertThat(sizes().get("tab.look").width).isGreaterThan(usual.get("tab.look").width);
      use(TextSize.USUAL);
      assertThat(sizes()).isEqualTo(usual);
    }
  }

  private void use(TextSize size) {
    WindowRobot.doOnEvents(() -> test.window.commands().run("view.text-" + size.percent()));
    robot.settle();
  }

  private Map<String, Dimension> sizes() {
    Map<String, Dimension> sizes = new TreeMap<>();
    WindowRobot.doOnEvents(
        () ->
            Parts.all(test.window.getContentPane()).stream()
                .filter(Component::isShowing)
                .filter(WholeWindowTest::isSteady)
                .forEach(part -> sizes.put(part.getName(), part.getSize())));
    return sizes;
  }

  /** What work that goes on does not resize; the slider of poses and answers come with it. */
  private static boolean isSteady(Component part) {
    boolean control =
        part instanceof AbstractButton
            || part instanceof JComboBox<?>
            || part instanceof JTextComponent text && text.isEditable();
    return control
        && part.getName() != null
        && Stream.of("status.", "compare.").noneMatch(part.getName()::startsWith);
  }

  @Test
  void whatIsWrongInAField_isGoneWithItsDocument() throws Exception {
    mode(2);
    robot.click("measure.page.tree");
    robot.write("measure.bark", "abc");
    robot.keys(KeyEvent.VK_ENTER);
    robot.find("measure.bark.fault");
    opened();
    robot.waitFor("the fault is gone", () -> !robot.isThere("measure.bark.fault"));
    assertThat(robot.words("measure.bark")).doesNotContain("abc");
  }

  @Test
  void whatIsTyped_isSavedWithoutLeavingTheField() throws Exception {
    Path file = opened();
    mode(2);
    robot.click("measure.page.tree");
    robot.write("measure.bark", "1.25 mm");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    robot.waitFor("it is saved", () -> Files.readString(file).contains("\"bark_mm\": 1.25"));
    assertThat(WindowRobot.focused()).contains("measure.bark");
  }

  @Test
  void theTour_pointsAtTheRealControls_andItsThirdStepLetsOnePull() {
    robot.menu("ht");
    for (int step = 1; step <= 5; step++) {
      String count = step + " of 5";
      robot.waitFor(count, () -> robot.words("tour.count").equals(count));
      TourStep now = TourStep.values()[step - 1];
      assertThat(WindowRobot.onEvents(() -> now.target(test.window).isShowing())).isTrue();
      assertThat(WindowRobot.onEvents(() -> now.target(test.window).getName()))
          .isEqualTo(List.of("canvas", "canvas", "tab.pull", "side", "menu.file").get(step - 1));
      if (now == TourStep.PULL) {
        pull();
        WindowRobot.doOnEvents(() -> robot.find("tour.next").requestFocusInWindow());
      }
      robot.waitFor("Next has the keyboard", () -> robot.find("tour.next").isFocusOwner());
      robot.keys(KeyEvent.VK_SPACE);
    }
    robot.waitFor("it is over", () -> !robot.isThere("tour.card"));
  }

  private void pull() {
    Component view = robot.find("canvas.view");
    robot.waitFor(
        "the branch is drawn",
        () -> test.window.parts().canvas().hit(end().x, end().y).isPresent());
    Point from = WindowRobot.onEvents(this::end);
    robot.drag(view, from, new Point(from.x - 10, from.y + 40));
    robot.waitFor("the wood has answered", () -> robot.find("pull.add").isEnabled());
  }

  private Point end() {
    Segment tip =
        document().tree().segments().stream()
            .filter(s -> s.id().equals("b2"))
            .findFirst()
            .orElseThrow();
    var at = test.window.parts().canvas().project(tip.end());
    return new Point((int) Math.round(at.x()), (int) Math.round(at.y()));
  }
}
