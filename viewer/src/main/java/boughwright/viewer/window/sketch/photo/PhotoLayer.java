// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasLayer;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.work.Workspace;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;

/** Paints the photos that fit the view behind the tree. */
public final class PhotoLayer implements CanvasLayer {
  private final Workspace workspace;
  private final Canvas canvas;
  private final Shape shape;
  private final PhotoImages images;

  public PhotoLayer(Workspace workspace, Canvas canvas, Shape shape, PhotoImages images) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.shape = shape;
    this.images = images;
  }

  @Override
  public void paint(Graphics2D pen) {
    if (workspace.document().backdrops().isEmpty()) {
      return;
    }
    Stance stance = Stance.of(canvas);
    for (Backdrop backdrop : workspace.document().backdrops()) {
      Optional<PhotoImages.Image> image = images.get(backdrop.photo());
      if (image.isPresent() && stance.reasonAgainst(backdrop).isEmpty() && backdrop.shown() > 0) {
        paint((Graphics2D) pen.create(), backdrop, image.get());
      }
    }
  }

  private void paint(Graphics2D pen, Backdrop backdrop, PhotoImages.Image image) {
    PhotoPlace place = PhotoPlace.of(canvas, backdrop, base(), image.height());
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.setComposite(AlphaComposite.SrcOver.derive((float) backdrop.shown()));
    pen.transform(place.toCanvas());
    BufferedImage picture = image.picture();
    pen.scale(
        image.width() / (double) picture.getWidth(), image.height() / (double) picture.getHeight());
    pen.drawImage(picture, 0, 0, null);
    pen.dispose();
  }

  private Point3 base() {
    return shape.skeleton().start(shape.skeleton().outward(0));
  }
}
