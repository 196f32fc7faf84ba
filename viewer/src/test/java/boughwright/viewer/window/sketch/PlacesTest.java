// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.edit.BranchEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Wound;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the tree stands in, what lines are tied to, and wounds clicked on the bark. */
@OnScreen
class PlacesTest {
  private static final List<String> SIZES =
      List.of("measure.container.length", "measure.container.width", "measure.container.depth");

  private final WindowRobot robot = new WindowRobot();
  @TempDir private Path home;
  private SketchFrame frame;

  /** A trunk, and one branch that is level and straight, as drawn too. */
  @BeforeEach
  void open() throws Exception {
    Document small = Sketches.small();
    frame = SketchFrame.open(home, BranchEdits.delete(small, List.of("b1b")).of(small));
  }

  @AfterEach
  void close() {
    frame.close();
  }

  private Document document() {
    return WindowRobot.onEvents(frame.workspace::document);
  }

  private Optional<Container> container() {
    return document().tree().setting().container();
  }

  private List<AnchorPoint> anchors() {
    return document().tree().setting().anchors();
  }

  private void undoAll() {
    WindowRobot.doOnEvents(
        () -> {
          while (frame.workspace.history().undoName().isPresent()) {
            frame.workspace.undo();
          }
        });
  }

  private void addAnchor() {
    int before = anchors().size();
    robot.reachAndClick("measure.anchor.add");
    robot.waitFor(
        "an anchor is added",
        () -> frame.workspace.document().tree().setting().anchors().size() == before + 1);
  }

  @Test
  void aContainer_isThereOnceItsThreeSizesAreTyped_andUndoEmptiesItsFields() {
    Document start = document();
    robot.click("measure.page.tree");
    robot.fill(SIZES.get(0), "30 cm");
    robot.fill(SIZES.get(1), "200");
    assertThat(document()).isSameAs(start);
    robot.fill(SIZES.get(2), "8,5 cm");
    assertThat(container().orElseThrow().size()).isEqualTo(new Container.Size(0.3, 0.2, 0.085));
    robot.fill("measure.container.rim", "-5");
    robot.fill("measure.container.mass", "4,5");
    robot.click("measure.container.tied");
    Container typed = container().orElseThrow();
    assertThat(typed.rim()).isCloseTo(-0.005, within(1e-12));
    assertThat(typed.mass()).hasValue(4.5);
    assertThat(typed.tiedIn()).isTrue();

    WindowRobot.doOnEvents(frame.workspace::undo);
    assertThat(container().orElseThrow().tiedIn()).isFalse();
    WindowRobot.doOnEvents(frame.workspace::undo);
    assertThat(robot.words("measure.container.mass")).isEmpty();
    undoAll();
    assertThat(document()).isEqualTo(start);
    for (String size : SIZES) {
      assertThat(robot.words(size)).as(size).isEmpty();
    }
    robot.fill("measure.container.rim", "3");
    assertThat(container()).as("nothing but a rim").isEmpty();
  }

  @Test
  void aContainerThatCannotBe_isRefusedInOneLineWhereItIsTyped() {
    robot.click("measure.page.tree");
    Document start = document();
    for (String wrong : List.of("0", "-30", "7 m", "wide", "30 kg")) {
      robot.fill(SIZES.get(0), wrong);
      assertThat(robot.words(SIZES.get(0) + ".fault"))
          .as(wrong)
          .startsWith("Inner length")
          .doesNotContain("\n");
      assertThat(document()).isSameAs(start);
    }
    robot.fill(SIZES.get(0), "300");
    robot.waitFor("it is right now", () -> !robot.isThere(SIZES.get(0) + ".fault"));
  }

  @Test
  void anAnchor_isNamedAndPlacedByTyping_andEachStepIsTakenBack() {
    Document start = document();
    robot.click("measure.page.tree");
    addAnchor();
    robot.reachAndFill("measure.anchor.name", "peg1");
    JComboBox<?> kind = robot.find("measure.anchor.kind", JComboBox.class);
    WindowRobot.doOnEvents(() -> kind.setSelectedItem(AnchorKind.PEG));
    robot.reachAndFill("measure.anchor.x", "12 cm");
    robot.reachAndFill("measure.anchor.y", "-40");
    robot.reachAndFill("measure.anchor.z", "1 1/2 in");
    AnchorPoint typed = anchors().get(0);
    assertThat(typed.id()).isEqualTo("peg1");
    assertThat(typed.kind()).isEqualTo(AnchorKind.PEG);
    assertThat(typed.at().x()).isCloseTo(0.12, within(1e-12));
    assertThat(typed.at().y()).isCloseTo(-0.04, within(1e-12));
    assertThat(typed.at().z()).isCloseTo(0.0381, within(1e-12));

    WindowRobot.doOnEvents(frame.workspace::undo);
    assertThat(anchors().get(0).at().z()).isZero();
    assertThat(robot.words("measure.anchor.z")).isEqualTo("0");
    undoAll();
    assertThat(document()).isEqualTo(start);
    assertThat(robot.isThere("measure.anchor.name")).isFalse();
  }

  @Test
  void anAnchorNameThatCannotBe_isRefusedInOneLineWhereItIsTyped() {
    robot.click("measure.page.tree");
    addAnchor();
    addAnchor();
    Document two = document();
    String first = anchors().get(0).id();
    for (String wrong : List.of(first, " ")) {
      robot.reachAndFill("measure.anchor.name", wrong);
      assertThat(robot.words("measure.anchor.name.fault"))
          .as("'" + wrong + "'")
          .isNotBlank()
          .doesNotContain("\n", "Exception");
      assertThat(document()).isSameAs(two);
    }
    robot.reachAndFill("measure.anchor.x", "9 m");
    assertThat(robot.words("measure.anchor.x.fault")).contains("too much").doesNotContain("\n");
    assertThat(document()).isSameAs(two);
  }

  /** Clicks on the bark where a level line of sight from the front goes [m]. */
  private Wound clicked(double right, double up) {
    frame.stands();
    Point at = frame.pixel(new Point3(right, 0, up));
    robot.click(frame.view(), at.x, at.y);
    List<Wound> all = document().tree().wounds();
    return all.get(all.size() - 1);
  }

  /**
   * The trunk is 30 mm thick at the soil and 25 mm at 100 mm. At 40 mm its radius is 14 mm, and 6
   * mm right of its middle the bark that is seen is sin 25.4 degrees = 6/14 round from the front,
   * which is where an upright segment begins to count; clockwise for one who looks up is to the
   * right.
   *
   * <p>The branch is 10 mm thick where it leaves the trunk, 13.75 mm out, and 8 mm at its tip, 80
   * mm out. At 60 mm its radius is 4.3 mm, and 2 mm above its middle the bark that is seen is cos
   * 62.3 degrees = 2/4.3 from the top toward the viewer, clockwise for one who looks out along it.
   */
  @Test
  void aWoundIsMarkedOnTheBark_whereItWasClicked() {
    robot.keys(KeyEvent.VK_F9);
    robot.find("measure.wound.add");

    Wound onTrunk = clicked(0.006, 0.04);
    assertThat(onTrunk.segment()).isEqualTo("t1");
    assertThat(onTrunk.along()).isCloseTo(0.4, within(0.01));
    assertThat(Math.toDegrees(onTrunk.round())).isCloseTo(25.4, within(2.0));

    Wound onBranch = clicked(0.06, 0.052);
    assertThat(onBranch.segment()).isEqualTo("b1");
    assertThat(onBranch.along()).isCloseTo(0.75, within(0.01));
    assertThat(Math.toDegrees(onBranch.round())).isCloseTo(62.3, within(4.0));

    undoAll();
    assertThat(document().tree().wounds()).isEmpty();
  }
}
