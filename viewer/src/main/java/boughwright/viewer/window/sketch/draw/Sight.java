// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.canvas.Canvas;

/**
 * The plane square to the line of sight through a point: what can be drawn in when one looks.
 *
 * @param through the point [m, tree frame]
 * @param right the viewer's right in it
 * @param up the viewer's up in it
 * @param pixelsPerMetre scale of the picture at the point
 */
public record Sight(Point3 through, Direction3 right, Direction3 up, double pixelsPerMetre) {
  private static final double REACH = 50;

  /** The plane through a point as a canvas shows it now. */
  public static Sight of(Canvas canvas, Point3 through) {
    Pixel at = canvas.project(through);
    Point3 middle = canvas.beside(through, at.x(), at.y());
    Vector3 right = canvas.beside(through, at.x() + REACH, at.y()).minus(middle);
    Vector3 up = canvas.beside(through, at.x(), at.y() - REACH).minus(middle);
    return new Sight(through, right.direction(), up.direction(), REACH / right.norm());
  }

  /** A point of the plane turned about {@code through} to the nearest multiple of a step [rad]. */
  public Point3 snapped(Point3 point, double step) {
    Vector3 away = point.minus(through);
    double angle = Math.atan2(away.dot(up.vector()), away.dot(right.vector()));
    double nearest = Math.round(angle / step) * step;
    double length = away.norm();
    return through
        .plus(right.times(length * Math.cos(nearest)))
        .plus(up.times(length * Math.sin(nearest)));
  }
}
