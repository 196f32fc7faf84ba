// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.modeller.edit.WoundEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Wound;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Hit;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.sketch.entry.Shown;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Workspace;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Marks a wound by a press on the bark and a drag for its size. */
public final class WoundTool implements CanvasTool {
  /** Size of a wound that is marked without a drag, until the person types it [m]. */
  private static final double USUAL = 10e-3;

  private static final double SHORTEST = 4;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Shape shape;
  private final Supplier<Optional<LocalDate>> seenOn;
  private Optional<Mark> mark = Optional.empty();

  /** A wound that is being marked. */
  private record Mark(Hit hit, double width, double height) {}

  /**
   * @param seenOn the day a new wound was seen
   */
  public WoundTool(
      Workspace workspace, Canvas canvas, Shape shape, Supplier<Optional<LocalDate>> seenOn) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.shape = shape;
    this.seenOn = seenOn;
  }

  @Override
  public String hint() {
    return "Wound: press on its middle on the bark and drag to its edge; type the exact size beside"
        + " the tree. Escape drops it.";
  }

  @Override
  public boolean pressed(Pointer pointer) {
    mark = canvas.hit(pointer.x(), pointer.y()).map(hit -> new Mark(hit, USUAL, USUAL));
    canvas.redraw();
    return mark.isPresent();
  }

  @Override
  public void dragged(Pointer pointer) {
    mark = mark.map(begun -> toward(begun, pointer));
    canvas.redraw();
  }

  /** Half the size along and across the limb, by how far the pointer is from the middle. */
  private Mark toward(Mark begun, Pointer pointer) {
    Point3 middle = begun.hit().bark();
    Pixel at = canvas.project(middle);
    double dx = pointer.x() - at.x();
    double dy = pointer.y() - at.y();
    if (Math.hypot(dx, dy) < SHORTEST) {
      return new Mark(begun.hit(), USUAL, USUAL);
    }
    Skeleton skeleton = shape.skeleton();
    int i = skeleton.indexOf(begun.hit().spot().segment());
    Pixel from = canvas.project(skeleton.start(i));
    Pixel to = canvas.project(skeleton.end(i));
    double length = Math.max(1, from.distance(to));
    double alongX = (to.x() - from.x()) / length;
    double alongY = (to.y() - from.y()) / length;
    double scale = Sight.of(canvas, middle).pixelsPerMetre();
    double height = 2 * Math.abs(dx * alongX + dy * alongY) / scale;
    double width = 2 * Math.abs(dx * alongY - dy * alongX) / scale;
    double least = 1e-3;
    double caliper = skeleton.caliper(i, begun.hit().spot().along());
    return new Mark(
        begun.hit(), Math.min(Math.PI * caliper, Math.max(least, width)), Math.max(least, height));
  }

  @Override
  public void released(Pointer pointer) {
    Optional<Mark> made = mark.map(begun -> toward(begun, pointer));
    mark = Optional.empty();
    canvas.redraw();
    made.ifPresent(this::add);
  }

  private void add(Mark made) {
    String segment = made.hit().spot().segment();
    Wound wound =
        new Wound(
            WoundEdits.nextId(workspace.document()),
            segment,
            rounded(made.hit().spot().along(), 1e3),
            Math.toRadians(rounded(Math.toDegrees(made.hit().round()), 1)),
            rounded(made.width(), 1e4),
            rounded(made.height(), 1e4),
            seenOn.get(),
            Map.of());
    if (workspace.edit(WoundEdits.add(wound))) {
      workspace.select(Selection.of(segment));
    }
  }

  private static double rounded(double value, double steps) {
    return Math.round(value * steps) / steps;
  }

  @Override
  public void moved(Pointer pointer) {}

  @Override
  public void cancelled() {
    mark = Optional.empty();
    canvas.redraw();
  }

  @Override
  public void paint(Graphics2D pen) {
    mark.ifPresent(made -> paint(new Handles(pen), made));
  }

  private void paint(Handles handles, Mark made) {
    Pixel at = canvas.project(made.hit().bark());
    Sight sight = Sight.of(canvas, made.hit().bark());
    Skeleton skeleton = shape.skeleton();
    int i = skeleton.indexOf(made.hit().spot().segment());
    Pixel from = canvas.project(skeleton.start(i));
    Pixel to = canvas.project(skeleton.end(i));
    double turn = Math.atan2(to.y() - from.y(), to.x() - from.x());
    double along = made.height() * sight.pixelsPerMetre();
    double across = made.width() * sight.pixelsPerMetre();
    AffineTransform place = AffineTransform.getTranslateInstance(at.x(), at.y());
    place.rotate(turn);
    handles.edged(
        place.createTransformedShape(new Ellipse2D.Double(-along / 2, -across / 2, along, across)));
    LengthUnit unit = workspace.units().length();
    handles.words(
        at,
        List.of(
            "wound, "
                + Shown.length(made.width(), unit)
                + " wide, "
                + Shown.measure(made.height(), unit)
                + " high"));
  }
}
