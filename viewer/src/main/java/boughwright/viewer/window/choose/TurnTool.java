// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Workspace;
import java.awt.Graphics2D;

/** Turns the tree by a drag, tilts it by a drag with Shift, and picks by a click. */
final class TurnTool implements CanvasTool {
  private static final double TURN_PER_PIXEL = Math.toRadians(0.4);
  private static final double TILT_PER_PIXEL = Math.toRadians(0.1);

  /** A press that moves less than this is a click [user pixels]. */
  private static final double CLICK = 4;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Turning turning;
  private Pointer start = new Pointer(0, 0, false, false, 0);
  private FrontPose before = FrontPose.upright(0);
  private boolean moved;

  TurnTool(Workspace workspace, Canvas canvas, Turning turning) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.turning = turning;
  }

  @Override
  public String hint() {
    return "Drag to turn the front; Shift and drag to tilt the tree.";
  }

  @Override
  public boolean pressed(Pointer pointer) {
    start = pointer;
    before = turning.pose();
    moved = false;
    return true;
  }

  @Override
  public void dragged(Pointer pointer) {
    double right = pointer.x() - start.x();
    double down = pointer.y() - start.y();
    moved |= Math.hypot(right, down) >= CLICK;
    if (!moved) {
      return;
    }
    if (start.shift()) {
      turning.tiltTo(
          before.tiltRight() + right * TILT_PER_PIXEL, before.tiltToward() + down * TILT_PER_PIXEL);
    } else {
      turning.turnTo(before.azimuth() + right * TURN_PER_PIXEL);
    }
  }

  @Override
  public void released(Pointer pointer) {
    if (!moved) {
      canvas
          .hit(pointer.x(), pointer.y())
          .ifPresentOrElse(
              hit -> workspace.select(Selection.of(hit.spot().segment())),
              () -> workspace.select(Selection.NONE));
    }
  }

  @Override
  public void moved(Pointer pointer) {
    // nothing follows a mouse that only moves
  }

  @Override
  public void cancelled() {
    if (moved) {
      turning.to(before);
      moved = false;
    }
  }

  @Override
  public boolean hasHandles() {
    return false;
  }

  @Override
  public void paint(Graphics2D pen) {
    // the tree itself shows it
  }
}
