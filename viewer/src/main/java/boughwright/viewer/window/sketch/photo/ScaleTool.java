// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Pointer;
import boughwright.viewer.window.sketch.draw.Marks;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;

/** Marks the two ends of a known length on a photo; each mark can be dragged until it fits. */
final class ScaleTool implements CanvasTool {
  private static final double GRASP = 16;

  private final Canvas canvas;
  private final Supplier<Optional<PhotoPlace>> place;
  private final DoubleConsumer marked;
  private final List<Point2D> ends = new ArrayList<>();
  private int held = -1;

  /**
   * @param place where the photo is; empty while it is hidden
   * @param marked told how long the marked length is when both ends are there [photo pixels]
   */
  ScaleTool(Canvas canvas, Supplier<Optional<PhotoPlace>> place, DoubleConsumer marked) {
    this.canvas = canvas;
    this.place = place;
    this.marked = marked;
  }

  @Override
  public String hint() {
    return "Scale: click on both ends of something whose length you know, such as a ruler or the"
        + " container. Drag a mark to put it right.";
  }

  /** How long the marked length is; empty until both ends are marked [photo pixels]. */
  OptionalDouble length() {
    return ends.size() < 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(ends.get(0).distance(ends.get(1)));
  }

  void forget() {
    ends.clear();
    held = -1;
    canvas.redraw();
  }

  @Override
  public boolean pressed(Pointer pointer) {
    Optional<PhotoPlace> photo = place.get();
    if (photo.isEmpty()) {
      return false;
    }
    Pixel here = new Pixel(pointer.x(), pointer.y());
    held = -1;
    for (int i = 0; i < ends.size(); i++) {
      if (photo.get().canvasPixel(ends.get(i)).distance(here) <= GRASP) {
        held = i;
      }
    }
    if (held < 0) {
      if (ends.size() == 2) {
        ends.clear();
      }
      held = ends.size();
      ends.add(photo.get().photoPixel(pointer.x(), pointer.y()));
    }
    canvas.redraw();
    return true;
  }

  @Override
  public void dragged(Pointer pointer) {
    Optional<PhotoPlace> photo = place.get();
    if (held >= 0 && photo.isPresent()) {
      ends.set(held, photo.get().photoPixel(pointer.x(), pointer.y()));
      canvas.redraw();
    }
  }

  @Override
  public void released(Pointer pointer) {
    held = -1;
    canvas.redraw();
    length().ifPresent(marked);
  }

  @Override
  public void moved(Pointer pointer) {}

  @Override
  public void cancelled() {
    forget();
  }

  @Override
  public void paint(Graphics2D pen) {
    Optional<PhotoPlace> photo = place.get();
    if (photo.isEmpty()) {
      return;
    }
    Marks marks = new Marks(pen);
    List<Pixel> seen = ends.stream().map(photo.get()::canvasPixel).toList();
    if (seen.size() == 2) {
      marks.line(seen.get(0), seen.get(1));
      marks.words(seen.get(1), "Type this length beside the tree");
    }
    seen.forEach(marks::spot);
  }
}
