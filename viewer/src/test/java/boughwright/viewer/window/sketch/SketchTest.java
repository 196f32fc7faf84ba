// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.TreeWood;
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

/** Sketches a tree from nothing, as a person does: some segments typed, some drawn. */
@OnScreen
class SketchTest {
  private final WindowRobot robot = new WindowRobot();
  @TempDir private Path folder;
  @TempDir private Path home;
  private SketchFrame frame;

  @BeforeAll
  static void theme() {
    WindowRobot.requireDisplay();
    WindowRobot.doOnEvents(() -> Theme.apply(Tone.LIGHT, TextSize.USUAL));
  }

  @BeforeEach
  void open() {
    frame = SketchFrame.open(home, Sketches.fresh());
    robot.click("measure.page.segments");
  }

  @AfterEach
  void close() {
    frame.close();
  }

  private List<Segment> segments() {
    return WindowRobot.onEvents(() -> frame.workspace.document().tree().segments());
  }

  private void waitForFocus(String name) {
    robot.waitFor(
        name + " has the focus", () -> WindowRobot.focused().map(name::equals).orElse(false));
  }

  /** Azimuth, elevation, length and both calipers, one after the other, without the mouse. */
  private void typeSegment(String... values) {
    robot.keys(KeyEvent.VK_INSERT);
    int before = segments().size();
    waitForFocus("measure.add.azimuth");
    for (String value : values) {
      robot.typeBlind(value + "\n");
    }
    robot.waitFor("it was added", () -> segments().size() == before + 1);
    waitForFocus("measure.add.azimuth");
  }

  private void pick(String id) {
    WindowRobot.doOnEvents(() -> frame.workspace.select(Selection.of(id)));
  }

  @Test
  void aTreeOfSixSegments_fromNew_isTheSameAfterSavingAndOpening() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_N);
    robot.write("new-tree.name", "Sketched hornbeam");
    robot.keys(KeyEvent.VK_ENTER);
    frame.desk.answerNotToSave();
    robot.waitFor("the sheet is gone", () -> !robot.isThere("new-tree"));
    robot.click("measure.page.segments");
    typeSegment("0", "88", "60", "25", "22");
    typeSegment("90", "80", "4 cm", "22", "18");
    Point3 top = segments().get(2).end();
    pick("t1");
    robot.click("measure.add.aside");
    typeSegment("270", "20", "80", "9", "7");
    robot.keys(KeyEvent.VK_F7);
    frame.drag(top, new Point3(top.x() - 0.03, 0, top.z() + 0.02));
    Point3 tip = segments().get(3).end();
    frame.drag(tip, new Point3(tip.x() + 0.02, 0, tip.z() - 0.01));
    assertThat(segments()).hasSize(6);
    robot.keys(KeyEvent.VK_F7);
    robot.click("measure.page.tree");
    robot.write("measure.species", "carpinus betulus");
    robot.keys(KeyEvent.VK_ENTER);
    robot.click("measure.page.wounds");
    pick("t1");
    robot.click("measure.wound.add");
    robot.fill("measure.wound.width", "12");
    Document sketched = WindowRobot.onEvents(frame.workspace::document);

    Path file = folder.resolve("sketch.tree.json");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    frame.desk.answerFile(file);
    robot.waitFor("it is saved", () -> frame.workspace.history().isSaved());
    robot.click("measure.page.segments");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_N);
    robot.fill("new-tree.name", "Another");
    robot.waitFor("another is open", () -> segments().size() == 1);
    robot.menu("fo");
    frame.desk.answerFile(file);
    frame.desk.answerNotToSave();

    robot.waitFor("it is open", () -> frame.workspace.file().isPresent());
    Document opened = WindowRobot.onEvents(frame.workspace::document);
    assertThat(opened).isEqualTo(sketched);
    assertThat(opened.tree().name()).isEqualTo("Sketched hornbeam");
    assertThat(opened.tree().wood()).isEqualTo(new TreeWood.OfSpecies("carpinus-betulus"));
    assertThat(opened.tree().wounds()).hasSize(1);
    assertThat(opened.tree().wounds().get(0).width()).isEqualTo(0.012);
  }

  /** 80 mm at azimuth 270 and 20 degrees: 75.175 mm to the right and 27.362 mm up. */
  @Test
  void aTypedBranch_endsWhereTapeAndProtractorSay() {
    robot.click("measure.add.aside");
    typeSegment("270", "20", "80", "9", "7");

    Segment branch = segments().get(1);
    assertThat(branch.kind()).isEqualTo(Kind.BRANCH);
    assertThat(branch.end().x()).isCloseTo(0.075175, within(1e-6));
    assertThat(branch.end().z()).isCloseTo(0.127362, within(1e-6));
    assertThat(branch.caliperStart()).isEqualTo(0.009);
  }

  /**
   * A trunk of five pieces with four branches, three of them of two pieces: all of it typed, each
   * value as a tape says it, proposals taken where they are right.
   */
  @Test
  void twelveSegments_fromNew_takeFewStrokesOfTheKeyboardAlone() {
    Strokes strokes = new Strokes();
    strokes.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_N);
    robot.find("new-tree.name");
    strokes.words("twelve\n");
    frame.desk.answerNotToSave();
    robot.waitFor("it is open", () -> frame.workspace.document().tree().name().equals("twelve"));
    strokes.keys(KeyEvent.VK_F4);
    robot.waitFor("the table is there", () -> focused("measure.table"));
    for (int i = 0; i < 6; i++) {
      strokes.keys(KeyEvent.VK_RIGHT);
    }
    strokes.words("70\t58\t50\n");
    strokes.keys(KeyEvent.VK_INSERT);
    waitForFocus("measure.add.azimuth");
    strokes.words("15\n80\n65\n\n44\n" + "200\n85\n60\n\n38\n" + "0\n85\n60\n\n30\n");
    strokes.words("100\n70\n60\n\n20\n");
    for (String branch :
        new String[] {
          "t1\n.9\n270\n15\n120\n18\n14\n" + "255\n5\n90\n\n10\n",
          "t2\n.8\n100\n10\n110\n15\n12\n" + "90\n0\n80\n\n8\n",
          "t3\n.7\n180\n20\n90\n12\n9\n" + "190\n10\n60\n\n6\n",
          "t4\n\n30\n25\n60\n8\n6\n"
        }) {
      strokes.keys(KeyEvent.VK_F3);
      waitForFocus("measure.add.parent");
      strokes.words(branch);
    }

    robot.waitFor("all are there", () -> frame.workspace.document().tree().segments().size() == 12);
    Segment b2 = WindowRobot.onEvents(() -> Sketches.segment(frame.workspace, "b2"));
    assertThat(b2.parent()).contains("t2");
    assertThat(b2.along()).isEqualTo(0.8);
    assertThat(b2.caliperStart()).isEqualTo(0.015);
    assertThat(segments().get(0).caliperStart()).isEqualTo(0.058);
    assertThat(segments()).filteredOn(one -> one.kind() == Kind.TRUNK).hasSize(5);
    assertThat(strokes.count).isLessThan(250);
  }

  /** Presses keys as a person does who waits for nothing, and counts how many. */
  private final class Strokes {
    private int count;

    void keys(int... codes) {
      count++;
      robot.keys(codes);
    }

    void words(String text) {
      count += text.length();
      robot.typeBlind(text);
    }
  }

  private static boolean focused(String name) {
    return WindowRobot.focused().map(name::equals).orElse(false);
  }

  @Test
  void theNextSegment_startsAsThickAsTheOneBeforeEnds() {
    typeSegment("0", "80", "30", "24", "21.5");

    assertThat(robot.words("measure.add.start")).isEqualTo("21.5");
    assertThat(robot.words("measure.add.parent")).isEqualTo("t2");
  }

  @Test
  void aSpecies_isFoundByApartOfItsName_andSaysWhatStandsInForIt() {
    robot.click("measure.page.tree");

    robot.write("measure.species", "hornb");
    robot.keys(KeyEvent.VK_DOWN);
    robot.keys(KeyEvent.VK_UP);
    robot.keys(KeyEvent.VK_ENTER);

    assertThat(robot.words("measure.species")).containsIgnoringCase("hornbeam");
    assertThat(robot.words("measure.species.values")).isNotBlank();
  }

  @Test
  void everyStepOfSketching_isUndoneToTheStart() {
    Document start = WindowRobot.onEvents(frame.workspace::document);
    typeSegment("0", "80", "30", "24", "21.5");
    typeSegment("90", "10", "50", "8", "6");
    robot.keys(KeyEvent.VK_F7);
    Point3 top = segments().get(2).end();
    frame.drag(top, new Point3(top.x() + 0.02, 0, top.z() + 0.02));
    int steps = segments().size() - 1;

    for (int i = 0; i < steps; i++) {
      WindowRobot.doOnEvents(frame.workspace::undo);
    }

    assertThat(WindowRobot.onEvents(frame.workspace::document)).isEqualTo(start);
  }
}
