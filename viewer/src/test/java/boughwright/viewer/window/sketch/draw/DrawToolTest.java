// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.viewer.window.canvas.Hit;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.sketch.FlatCanvas;
import boughwright.viewer.window.sketch.Sketches;
import boughwright.viewer.window.work.Workspace;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** 2 pixels to a millimetre, the trunk base at (400, 500): see {@link FlatCanvas}. */
class DrawToolTest {
  private final Workspace workspace = Sketches.workspace(Sketches.fresh());
  private final Shape shape = new Shape(workspace);

  private static Pointer at(double x, double y) {
    return new Pointer(x, y, false, false, 1);
  }

  private static void drag(DrawTool tool, Pointer from, Pointer to) {
    assertThat(tool.pressed(from)).isTrue();
    tool.dragged(to);
    tool.released(to);
  }

  private Joint joint(String id) {
    return shape.skeleton().joint(shape.skeleton().indexOf(id));
  }

  @Test
  void drag_addsAsegmentThatGoesOn_fromTheTopNode() {
    FlatCanvas canvas = new FlatCanvas(0);

    drag(new DrawTool(workspace, canvas, shape), at(409, 308), at(460, 180));

    Segment added = Sketches.segment(workspace, "t2");
    assertThat(added.end().x()).isCloseTo(0.030, within(1e-9));
    assertThat(added.end().y()).isCloseTo(0, within(1e-9));
    assertThat(added.end().z()).isCloseTo(0.160, within(1e-9));
    assertThat(added.kind()).isEqualTo(Kind.TRUNK);
    assertThat(joint("t2")).isEqualTo(Joint.CONTINUES);
    assertThat(added.caliperStart()).isEqualTo(0.025);
    assertThat(workspace.selection().segments()).containsExactly("t2");
  }

  @Test
  void drag_liesInThePlaneSquareToTheView_fromTheLeftSide() {
    FlatCanvas canvas = new FlatCanvas(Math.toRadians(90));

    drag(new DrawTool(workspace, canvas, shape), at(400, 300), at(500, 300));

    Point3 end = Sketches.segment(workspace, workspace.selection().last().orElseThrow()).end();
    assertThat(end.x()).isCloseTo(0, within(1e-9));
    assertThat(end.y()).isCloseTo(-0.050, within(1e-9));
    assertThat(end.z()).isCloseTo(0.100, within(1e-9));
  }

  @Test
  void drag_startsAbranch_whereItMeetsAlimb() {
    FlatCanvas canvas = new FlatCanvas(0);
    Point3 axis = new Point3(0, 0, 0.05);
    canvas.hit = Optional.of(new Hit(new Spot("t1", 0.5), axis, new Point3(0, -0.014, 0.05), 0));

    drag(new DrawTool(workspace, canvas, shape), at(405, 400), at(520, 340));

    Segment added = Sketches.segment(workspace, workspace.selection().last().orElseThrow());
    assertThat(added.along()).isEqualTo(0.5);
    assertThat(joint(added.id())).isEqualTo(Joint.UNION);
    assertThat(added.kind()).isEqualTo(Kind.BRANCH);
    assertThat(added.end().x()).isCloseTo(0.060, within(1e-9));
    assertThat(added.end().z()).isCloseTo(0.080, within(1e-9));
  }

  @Test
  void shift_turnsTheSegmentInStepsOf15Degrees() {
    FlatCanvas canvas = new FlatCanvas(0);
    DrawTool tool = new DrawTool(workspace, canvas, shape);

    drag(tool, at(400, 300), new Pointer(500, 248, true, false, 1));

    Point3 end = Sketches.segment(workspace, "t2").end();
    double angle = Math.toDegrees(Math.atan2(end.z() - 0.1, end.x()));
    assertThat(angle).isCloseTo(30, within(0.01));
    assertThat(Math.hypot(end.x(), end.z() - 0.1)).isCloseTo(0.056356, within(2e-6));
  }

  @Test
  void press_isLeftToTurningTheTree_besideAllWood() {
    DrawTool tool = new DrawTool(workspace, new FlatCanvas(0), shape);

    assertThat(tool.pressed(at(40, 40))).isFalse();
  }

  @Test
  void aSlipOfTheHand_addsNothing() {
    DrawTool tool = new DrawTool(workspace, new FlatCanvas(0), shape);

    drag(tool, at(400, 300), at(402, 298));

    assertThat(workspace.document()).isEqualTo(Sketches.fresh());
  }

  @Test
  void escape_dropsTheSegment() {
    DrawTool tool = new DrawTool(workspace, new FlatCanvas(0), shape);
    tool.pressed(at(400, 300));
    tool.dragged(at(500, 100));

    tool.cancelled();
    tool.released(at(500, 100));

    assertThat(workspace.document()).isEqualTo(Sketches.fresh());
  }

  @Test
  void oneUndo_takesTheSegmentBack() {
    drag(new DrawTool(workspace, new FlatCanvas(0), shape), at(400, 300), at(460, 180));

    workspace.undo();

    assertThat(workspace.document()).isEqualTo(Sketches.fresh());
  }
}
