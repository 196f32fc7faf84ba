// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Hit;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.sketch.entry.Draft;
import boughwright.viewer.window.sketch.entry.Polar;
import boughwright.viewer.window.sketch.entry.Seat;
import boughwright.viewer.window.sketch.entry.Shown;
import boughwright.viewer.window.sketch.entry.Typed;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Workspace;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;

/**
 * Adds a segment by a drag from a node or from any place on a limb, in the plane square to the line
 * of sight through the place it starts at.
 */
public final class DrawTool implements CanvasTool {
  /** A shorter drag is a slip of the hand [user pixels]. */
  private static final double SHORTEST = 6;

  private static final double SNAP = Math.toRadians(15);

  private final Workspace workspace;
  private final Canvas canvas;
  private final Shape shape;
  private Optional<Stroke> stroke = Optional.empty();
  private Optional<Pixel> hovered = Optional.empty();

  /** A stroke that is being drawn. */
  private record Stroke(Seat seat, Sight sight, Point3 end) {
    Polar course() {
      return Polar.between(sight.through(), end);
    }
  }

  public DrawTool(Workspace workspace, Canvas canvas, Shape shape) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.shape = shape;
  }

  @Override
  public String hint() {
    return "Draw: drag from a node or a limb. The new piece lies flat to your view; Shift turns it"
        + " in steps of 15\u00B0, Escape drops it.";
  }

  @Override
  public boolean pressed(Pointer pointer) {
    Skeleton skeleton = shape.skeleton();
    Optional<Spot> from =
        nodes().near(pointer).map(Nodes.Node::spot).or(() -> hit(pointer).map(Hit::spot));
    stroke =
        from.map(spot -> Seat.at(skeleton, spot))
            .map(
                seat -> {
                  Point3 start = seat.point(skeleton);
                  return new Stroke(seat, Sight.of(canvas, start), start);
                });
    return stroke.isPresent();
  }

  private Optional<Hit> hit(Pointer pointer) {
    return canvas.hit(pointer.x(), pointer.y());
  }

  private Nodes nodes() {
    return Nodes.of(canvas, shape.skeleton());
  }

  @Override
  public void dragged(Pointer pointer) {
    stroke = stroke.map(begun -> toward(begun, pointer));
    canvas.redraw();
  }

  private Stroke toward(Stroke begun, Pointer pointer) {
    Point3 end = canvas.beside(begun.sight().through(), pointer.x(), pointer.y());
    return new Stroke(
        begun.seat(), begun.sight(), pointer.shift() ? begun.sight().snapped(end, SNAP) : end);
  }

  @Override
  public void released(Pointer pointer) {
    Optional<Stroke> drawn = stroke.map(begun -> toward(begun, pointer));
    stroke = Optional.empty();
    canvas.redraw();
    drawn.ifPresent(this::add);
  }

  private void add(Stroke drawn) {
    Skeleton skeleton = shape.skeleton();
    if (drawn.course().length() * drawn.sight().pixelsPerMetre() < SHORTEST) {
      workspace.select(Selection.of(skeleton.segment(drawn.seat().parent()).id()));
      return;
    }
    Draft draft = Draft.likely(skeleton, drawn.seat(), drawn.course());
    String id = draft.freeId(workspace.document(), skeleton);
    if (workspace.edit(SegmentEdits.add(draft.segment(skeleton, id)))) {
      workspace.select(Selection.of(id));
    }
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
    stroke = Optional.empty();
    hovered = Optional.empty();
    canvas.redraw();
  }

  @Override
  public void paint(Graphics2D pen) {
    Handles handles = new Handles(pen);
    nodes().all().forEach(node -> handles.small(node.seen()));
    if (stroke.isEmpty()) {
      hovered.ifPresent(handles::large);
      return;
    }
    Stroke drawn = stroke.get();
    Pixel from = canvas.project(drawn.sight().through());
    Pixel to = canvas.project(drawn.end());
    if (drawn.course().length() > 0) {
      Draft draft = Draft.likely(shape.skeleton(), drawn.seat(), drawn.course());
      double scale = drawn.sight().pixelsPerMetre();
      handles.wood(from, to, draft.calipers().start() * scale, draft.calipers().end() * scale);
      handles.words(to, words(draft));
    }
    handles.large(from);
  }

  private List<String> words(Draft draft) {
    LengthUnit unit = workspace.units().length();
    return List.of(
        PointWords.of(draft.course(), unit),
        (draft.continues() ? "goes on, " : "new " + Typed.word(draft.kind()) + ", ")
            + "caliper "
            + Shown.length(draft.calipers().start(), unit)
            + " to "
            + Shown.measure(draft.calipers().end(), unit)
            + " (proposed)");
  }
}
