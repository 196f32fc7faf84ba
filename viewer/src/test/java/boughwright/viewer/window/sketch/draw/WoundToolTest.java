// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Wound;
import boughwright.viewer.window.canvas.Hit;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.sketch.FlatCanvas;
import boughwright.viewer.window.sketch.Sketches;
import boughwright.viewer.window.work.Workspace;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The branch b1 is level, runs to the right, and is seen at 2 pixels to a millimetre. */
class WoundToolTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private final Workspace workspace = Sketches.workspace(Sketches.small());
  private final FlatCanvas canvas = new FlatCanvas(0);
  private final WoundTool tool =
      new WoundTool(workspace, canvas, new Shape(workspace), () -> Optional.of(DAY));

  @BeforeEach
  void aim() {
    Point3 axis = new Point3(0.04, 0, 0.05);
    Point3 bark = new Point3(0.04, -0.0045, 0.05);
    canvas.hit = Optional.of(new Hit(new Spot("b1", 0.5), axis, bark, Math.toRadians(90)));
  }

  private static Pointer at(double x, double y) {
    return new Pointer(x, y, false, false, 1);
  }

  private Wound only() {
    assertThat(workspace.document().tree().wounds()).hasSize(1);
    return workspace.document().tree().wounds().get(0);
  }

  /** 8 pixels along the branch and 3 across it, so 2 x 4 mm and 2 x 1.5 mm. */
  @Test
  void aDrag_givesHalfTheSizeAlongAndAcrossTheLimb() {
    tool.pressed(at(480, 400));
    tool.dragged(at(484, 401));
    tool.released(at(488, 403));

    Wound wound = only();
    assertThat(wound.segment()).isEqualTo("b1");
    assertThat(wound.along()).isEqualTo(0.5);
    assertThat(Math.toDegrees(wound.round())).isCloseTo(90, within(1e-9));
    assertThat(wound.height()).isCloseTo(0.008, within(1e-9));
    assertThat(wound.width()).isCloseTo(0.003, within(1e-9));
    assertThat(wound.seenOn()).contains(DAY);
    assertThat(workspace.selection().segments()).containsExactly("b1");
  }

  @Test
  void aClick_marksAwoundWhoseSizeIsTypedLater() {
    tool.pressed(at(480, 400));
    tool.released(at(481, 400));

    assertThat(only().width()).isEqualTo(0.01);
    assertThat(only().height()).isEqualTo(0.01);
  }

  /** Its start caliper counts at the bark of the trunk, 13.75 mm out: so 9.2075 mm there. */
  @Test
  void aWound_isNoWiderThanTheLimbIsRound() {
    tool.pressed(at(480, 400));
    tool.released(at(480, 300));

    assertThat(only().width()).isCloseTo(Math.PI * 0.0092075, within(5e-5));
  }

  @Test
  void escape_dropsTheWound() {
    tool.pressed(at(480, 400));
    tool.cancelled();
    tool.released(at(488, 403));

    assertThat(workspace.document()).isEqualTo(Sketches.small());
  }

  @Test
  void press_isLeftToTurningTheTree_besideAllBark() {
    canvas.hit = Optional.empty();

    assertThat(tool.pressed(at(40, 40))).isFalse();
  }

  @Test
  void oneUndo_takesTheWoundBack() {
    tool.pressed(at(480, 400));
    tool.released(at(488, 403));

    workspace.undo();

    assertThat(workspace.document()).isEqualTo(Sketches.small());
  }
}
