// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.canvas.Canvas;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a photo stands behind the tree: upright in the plane through the trunk base, square to the
 * view it was taken from.
 *
 * @param toCanvas from pixels of the upright photo to user pixels of the canvas
 */
public record PhotoPlace(AffineTransform toCanvas) {
  /** Height of a photo that is not scaled yet, so that there is something to scale [m]. */
  static final double UNSCALED_HEIGHT = 0.5;

  /** A step that is long beside the rounding of a projection and short beside a tree [m]. */
  private static final double STEP = 0.1;

  /**
   * The place of a photo.
   *
   * @param base the trunk base [m, tree frame]
   * @param height height of the upright photo [pixels]
   */
  public static PhotoPlace of(Canvas canvas, Backdrop backdrop, Point3 base, int height) {
    Direction3 right = Direction3.ofAzimuth(backdrop.seenFrom() - Math.PI / 2);
    Pixel middle = canvas.project(base);
    Pixel aside = canvas.project(base.plus(right.times(STEP)));
    Pixel above = canvas.project(base.plus(Direction3.UP.times(STEP)));
    double scale = metresPerPixel(backdrop, height) / STEP;
    AffineTransform place =
        new AffineTransform(
            (aside.x() - middle.x()) * scale,
            (aside.y() - middle.y()) * scale,
            (middle.x() - above.x()) * scale,
            (middle.y() - above.y()) * scale,
            middle.x(),
            middle.y());
    place.translate(-backdrop.baseX(), -backdrop.baseY());
    return new PhotoPlace(place);
  }

  private static double metresPerPixel(Backdrop backdrop, int height) {
    return backdrop.metresPerPixel().orElse(UNSCALED_HEIGHT / height);
  }

  /**
   * The corners of a photo where it stands [m, tree frame].
   *
   * @param base the trunk base [m, tree frame]
   * @param width width of the upright photo [pixels]
   * @param height its height [pixels]
   */
  public static List<Point3> corners(Backdrop backdrop, Point3 base, int width, int height) {
    Direction3 right = Direction3.ofAzimuth(backdrop.seenFrom() - Math.PI / 2);
    double scale = metresPerPixel(backdrop, height);
    List<Point3> corners = new ArrayList<>();
    for (int x : new int[] {0, width}) {
      for (int y : new int[] {0, height}) {
        corners.add(
            base.plus(right.times((x - backdrop.baseX()) * scale))
                .plus(Direction3.UP.times((backdrop.baseY() - y) * scale)));
      }
    }
    return corners;
  }

  /** The pixel of the photo that is seen at a place of the canvas. */
  public Point2D photoPixel(double x, double y) {
    try {
      return toCanvas.inverseTransform(new Point2D.Double(x, y), null);
    } catch (NoninvertibleTransformException e) {
      throw new IllegalStateException("a photo is never seen edge on", e);
    }
  }

  /** Where a pixel of the photo is seen on the canvas. */
  public Pixel canvasPixel(Point2D photo) {
    Point2D at = toCanvas.transform(photo, null);
    return new Pixel(at.getX(), at.getY());
  }
}
