// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Workspace;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.util.Optional;

/** What mouse and keys do on the tree: the tool in hand works, or segments are picked. */
final class Handling implements CanvasMouse.Target {
  private final Workspace work;
  private final Pointing pointing;
  private final Overlay overlay;
  private final CanvasView view;
  private final Strip strip;
  private Optional<CanvasTool> tool = Optional.empty();

  Handling(Workspace work, Pointing pointing, Overlay overlay, Ground ground) {
    this.work = work;
    this.pointing = pointing;
    this.overlay = overlay;
    view = ground.view();
    strip = ground.strip();
  }

  /** Where it is worked, and where the hint of a tool is read. */
  record Ground(CanvasView view, Strip strip) {}

  void use(CanvasTool next) {
    useNone();
    tool = Optional.of(next);
    view.setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
    strip.hint(next.hint());
    view.repaint();
  }

  void useNone() {
    Optional<CanvasTool> before = tool;
    tool = Optional.empty();
    before.ifPresent(CanvasTool::cancelled);
    view.setCursor(Cursor.getDefaultCursor());
    strip.hint("");
    view.repaint();
  }

  /** Forgets what a tool has begun; without a tool, what is picked. */
  void cancel() {
    if (tool.isPresent()) {
      tool.get().cancelled();
    } else {
      work.select(Selection.NONE);
    }
    view.repaint();
  }

  void paint(Graphics2D pen) {
    tool.ifPresent(t -> t.paint(pen));
  }

  /** Lets handles follow; what else a tool does is seen with the next picture of the tree. */
  private void repaintHandles() {
    if (tool.filter(CanvasTool::hasHandles).isPresent()) {
      view.repaint();
    }
  }

  @Override
  public boolean pressed(Pointer pointer) {
    boolean taken = tool.isPresent() && tool.get().pressed(pointer);
    repaintHandles();
    return taken;
  }

  @Override
  public void dragged(Pointer pointer) {
    tool.ifPresent(t -> t.dragged(pointer));
    repaintHandles();
  }

  @Override
  public void released(Pointer pointer) {
    tool.ifPresent(t -> t.released(pointer));
    repaintHandles();
  }

  @Override
  public void hovered(Pointer pointer) {
    tool.ifPresent(t -> t.moved(pointer));
    boolean changed = overlay.hover(pointing.hit(pointer.x(), pointer.y()), pointer);
    if (changed) {
      view.repaint();
    } else {
      repaintHandles();
    }
  }

  @Override
  public void left() {
    overlay.forgetHovered();
    view.repaint();
  }

  @Override
  public void clicked(Pointer pointer) {
    Optional<String> picked = pointing.hit(pointer.x(), pointer.y()).map(h -> h.spot().segment());
    boolean more = pointer.shift() || pointer.control();
    work.select(Picking.after(work.selection(), picked, more));
  }
}
