// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.sketch.FlatCanvas;
import boughwright.viewer.window.sketch.Sketches;
import boughwright.viewer.window.work.Workspace;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The branch b1 ends at (560, 400) on the canvas and carries b1b, which ends at (680, 360). */
class MoveToolTest {
  private final Workspace workspace = Sketches.workspace(Sketches.small());
  private final MoveTool tool = new MoveTool(workspace, new FlatCanvas(0), new Shape(workspace));

  private static Pointer at(double x, double y, boolean control) {
    return new Pointer(x, y, false, control, 1);
  }

  private void assertEnd(String id, double x, double z) {
    Point3 end = Sketches.segment(workspace, id).end();
    assertThat(end.x()).isCloseTo(x, within(1e-9));
    assertThat(end.y()).isCloseTo(0, within(1e-9));
    assertThat(end.z()).isCloseTo(z, within(1e-9));
  }

  @Test
  void drag_bringsWhatGrowsOnTheNodeAlong() {
    tool.pressed(at(560, 400, false));
    tool.dragged(at(580, 390, false));
    tool.released(at(600, 380, false));

    assertEnd("b1", 0.1, 0.06);
    assertEnd("b1b", 0.16, 0.08);
  }

  @Test
  void drag_movesTheNodeAlone_withControl() {
    tool.pressed(at(560, 400, true));
    tool.dragged(at(580, 390, true));
    tool.released(at(600, 380, true));

    assertEnd("b1", 0.1, 0.06);
    assertEnd("b1b", 0.14, 0.07);
  }

  @Test
  void escape_putsTheNodeBack() {
    tool.pressed(at(560, 400, false));
    tool.dragged(at(600, 380, false));

    tool.cancelled();
    tool.released(at(600, 380, false));

    assertThat(workspace.document()).isEqualTo(Sketches.small());
  }

  @Test
  void aHiddenBranch_isNotGrasped() {
    FlatCanvas canvas = new FlatCanvas(0);
    canvas.hidden = Set.of("b1");
    MoveTool here = new MoveTool(workspace, canvas, new Shape(workspace));

    assertThat(here.pressed(at(560, 400, false))).isFalse();
  }

  @Test
  void base_staysWhereItIs() {
    assertThat(tool.pressed(at(400, 500, false))).isFalse();
  }
}
