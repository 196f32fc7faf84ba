// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.viewer.window.canvas.CanvasTool;
import boughwright.viewer.window.canvas.Pointer;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Tells by a click where the trunk base is on a photo. */
final class BaseTool implements CanvasTool {
  private final Supplier<Optional<PhotoPlace>> place;
  private final Consumer<Point2D> clicked;

  /**
   * @param place where the photo is; empty while it is hidden
   * @param clicked told the pixel of the photo
   */
  BaseTool(Supplier<Optional<PhotoPlace>> place, Consumer<Point2D> clicked) {
    this.place = place;
    this.clicked = clicked;
  }

  @Override
  public String hint() {
    return "Trunk base: click on the photo where the middle of the trunk meets the soil.";
  }

  @Override
  public boolean pressed(Pointer pointer) {
    return place.get().isPresent();
  }

  @Override
  public void dragged(Pointer pointer) {}

  @Override
  public void released(Pointer pointer) {
    place.get().ifPresent(photo -> clicked.accept(photo.photoPixel(pointer.x(), pointer.y())));
  }

  @Override
  public void moved(Pointer pointer) {}

  @Override
  public void cancelled() {}

  @Override
  public void paint(Graphics2D pen) {}
}
