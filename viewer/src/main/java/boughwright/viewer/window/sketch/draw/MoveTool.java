// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.modeller.edit.Run;
import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.sketch.entry.Polar;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Workspace;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;

/** Moves a node by a drag, with all that grows on it, or alone. */
public final class MoveTool implements CanvasTool {
  private static final double SHORTEST = 3;
  private static final double SNAP = Math.toRadians(15);

  private final Workspace workspace;
  private final Canvas canvas;
  private final Shape shape;
  private Optional<Grip> grip = Optional.empty();
  private Optional<Pixel> hovered = Optional.empty();

  /** A node that is held, and where it has come to. */
  private record Grip(String segment, Point3 start, Point3 from, Point3 to, boolean alone) {}

  public MoveTool(Workspace workspace, Canvas canvas, Shape shape) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.shape = shape;
  }

  @Override
  public String hint() {
    return "Move: drag a node, flat to your view; what grows on it comes along. Ctrl moves the node"
        + " alone, Shift turns in steps of 15\u00B0, Escape puts it back.";
  }

  @Override
  public boolean pressed(Pointer pointer) {
    grip =
        nodes()
            .near(pointer)
            .map(
                node -> {
                  Skeleton skeleton = shape.skeleton();
                  int i = skeleton.indexOf(node.spot().segment());
                  Point3 end = skeleton.end(i);
                  return new Grip(
                      node.spot().segment(), skeleton.start(i), end, end, pointer.control());
                });
    grip.ifPresent(held -> workspace.select(Selection.of(held.segment())));
    return grip.isPresent();
  }

  private Nodes nodes() {
    Nodes all = Nodes.of(canvas, shape.skeleton());
    return new Nodes(all.all().stream().filter(node -> !node.isBase()).toList());
  }

  @Override
  public void dragged(Pointer pointer) {
    grip = grip.map(held -> toward(held, pointer));
    canvas.redraw();
  }

  private Grip toward(Grip held, Pointer pointer) {
    Point3 to = canvas.beside(held.from(), pointer.x(), pointer.y());
    if (pointer.shift()) {
      to = Sight.of(canvas, held.start()).snapped(to, SNAP);
    }
    return new Grip(held.segment(), held.start(), held.from(), to, pointer.control());
  }

  @Override
  public void released(Pointer pointer) {
    Optional<Grip> moved = grip.map(held -> toward(held, pointer));
    grip = Optional.empty();
    canvas.redraw();
    moved
        .filter(held -> canvas.project(held.from()).distance(canvas.project(held.to())) >= SHORTEST)
        .ifPresent(
            held ->
                workspace.edit(
                    SegmentEdits.moveEnd(
                        held.segment(),
                        new Run.To(Polar.rounded(held.to())),
                        held.alone() ? SegmentEdits.Carry.STAYS : SegmentEdits.Carry.WITH)));
  }

  @Override
  public void moved(Pointer pointer) {
    Optional<Pixel> now = nodes().near(pointer).map(Nodes.Node::seen);
    if (!now.equals(hovered)) {
      hovered = now;
      canvas.redraw();
    }
  }

  @Override
  public void cancelled() {
    grip = Optional.empty();
    hovered = Optional.empty();
    canvas.redraw();
  }

  @Override
  public void paint(Graphics2D pen) {
    Handles handles = new Handles(pen);
    nodes().all().forEach(node -> handles.small(node.seen()));
    if (grip.isEmpty()) {
      hovered.ifPresent(handles::large);
      return;
    }
    Grip held = grip.get();
    Pixel to = canvas.project(held.to());
    handles.line(canvas.project(held.start()), to);
    handles.large(to);
    handles.words(to, words(held));
  }

  private List<String> words(Grip held) {
    return List.of(
        PointWords.of(Polar.between(held.start(), held.to()), workspace.units().length()),
        held.alone() ? "the node alone" : "with what grows on it");
  }
}
