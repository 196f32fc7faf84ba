// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import org.joml.Matrix4f;

/**
 * A view: flat, so that lengths square to the line of sight are true to scale, or in perspective.
 *
 * @param angle from where
 * @param target the point at the middle of the picture [m, scene frame]
 * @param pixelsPerMetre scale; in perspective that at the target
 * @param width width of the picture [pixels]
 * @param height height of the picture [pixels]
 * @param depth half the depth that is drawn, about the target [m]
 * @param eye from the target to the eye; infinite where the view is flat [m]
 */
public record Camera(
    ViewAngle angle,
    Point3 target,
    double pixelsPerMetre,
    int width,
    int height,
    double depth,
    double eye) {
  /** Nothing nearer to the eye than this part of its distance is drawn [1]. */
  private static final double NEAREST = 0.02;

  /**
   * A place in a picture.
   *
   * @param x from the left edge [pixels]
   * @param y from the upper edge [pixels]
   */
  public record Pixel(double x, double y) {
    public double distance(Pixel other) {
      return Math.hypot(x - other.x, y - other.y);
    }
  }

  /**
   * A line of sight.
   *
   * @param from a point on it before everything that is drawn [m, scene frame]
   * @param along away from the viewer
   */
  public record Sight(Point3 from, Direction3 along) {}

  public Camera {
    if (!(pixelsPerMetre > 0) || width < 1 || height < 1 || !(depth > 0) || !(eye > 0)) {
      throw new IllegalArgumentException(
          "camera of "
              + width
              + " by "
              + height
              + " pixels, "
              + pixelsPerMetre
              + " per metre, the eye "
              + eye
              + " m away");
    }
  }

  /** A flat view. */
  public Camera(
      ViewAngle angle, Point3 target, double pixelsPerMetre, int width, int height, double depth) {
    this(angle, target, pixelsPerMetre, width, height, depth, Double.POSITIVE_INFINITY);
  }

  public boolean isFlat() {
    return Double.isInfinite(eye);
  }

  /** How far a point lies toward the viewer from the target [m]. */
  private double toward(Point3 point) {
    return point.minus(target).dot(angle.toViewer().vector());
  }

  /**
   * How large things appear at a point; in perspective that grows toward the eye, and no further
   * than nearly at it [pixels/m].
   */
  public double scaleAt(Point3 point) {
    return isFlat() ? pixelsPerMetre : pixelsPerMetre * eye / away(point);
  }

  /** From the eye straight ahead to the plane of a point, in perspective [m]. */
  private double away(Point3 point) {
    return Math.max(NEAREST * eye, eye - toward(point));
  }

  /** Where a point appears. */
  public Pixel project(Point3 point) {
    Vector3 from = point.minus(target);
    double scale = scaleAt(point);
    return new Pixel(
        width / 2.0 + scale * from.dot(angle.right().vector()),
        height / 2.0 - scale * from.dot(angle.up().vector()));
  }

  /** The line of sight through a pixel. */
  public Sight sight(double x, double y) {
    Vector3 aside = aside(x, y);
    Vector3 toViewer = angle.toViewer().vector();
    if (isFlat()) {
      return new Sight(target.plus(aside).plus(toViewer.times(depth)), angle.toViewer().opposite());
    }
    Point3 from = target.plus(toViewer.times(eye));
    return new Sight(from, target.plus(aside).minus(from).direction());
  }

  /** From the target to what a pixel shows of the plane through it, square to the view [m]. */
  private Vector3 aside(double x, double y) {
    return angle
        .right()
        .times((x - width / 2.0) / pixelsPerMetre)
        .plus(angle.up().times((height / 2.0 - y) / pixelsPerMetre));
  }

  /** The point under a pixel on the plane through another point, square to the view. */
  public Point3 beside(Point3 through, double x, double y) {
    double shrunk = pixelsPerMetre / scaleAt(through);
    return target.plus(aside(x, y).times(shrunk)).plus(angle.toViewer().times(toward(through)));
  }

  /** How deep a point lies in what is drawn: 0 at the near end, 1 at the far end [1]. */
  public double windowDepth(Point3 point) {
    if (isFlat()) {
      return 0.5 - toward(point) / (2 * depth);
    }
    double far = far();
    return far * (1 - near() / away(point)) / (far - near());
  }

  private double near() {
    return Math.max(NEAREST * eye, eye - depth);
  }

  private double far() {
    return eye + depth;
  }

  /** What pushes a point near the target away from the viewer, in clip space over w [1]. */
  public double clipShift(double metres) {
    return isFlat() ? metres / depth : 2 * far() * near() / (far() - near()) / (eye * eye) * metres;
  }

  /** Scene frame to the view: x right, y up, z toward the viewer [m]. */
  public Matrix4f view() {
    double back = isFlat() ? 1 : eye;
    Vector3 toViewer = angle.toViewer().times(back);
    Vector3 up = angle.up().vector();
    return new Matrix4f()
        .setLookAt(
            (float) (target.x() + toViewer.x()),
            (float) (target.y() + toViewer.y()),
            (float) (target.z() + toViewer.z()),
            (float) target.x(),
            (float) target.y(),
            (float) target.z(),
            (float) up.x(),
            (float) up.y(),
            (float) up.z());
  }

  /** Scene frame to OpenGL's clip space. */
  public Matrix4f viewProjection() {
    double halfWidth = width / 2.0 / pixelsPerMetre;
    double halfHeight = height / 2.0 / pixelsPerMetre;
    if (!isFlat()) {
      double at = near() / eye;
      return new Matrix4f()
          .setFrustum(
              (float) (-halfWidth * at),
              (float) (halfWidth * at),
              (float) (-halfHeight * at),
              (float) (halfHeight * at),
              (float) near(),
              (float) far())
          .mul(view());
    }
    return new Matrix4f()
        .setOrtho(
            (float) -halfWidth,
            (float) halfWidth,
            (float) -halfHeight,
            (float) halfHeight,
            (float) (1 - depth),
            (float) (1 + depth))
        .mul(view());
  }

  /**
   * The camera of a part of this picture, given by its left upper corner and size [pixels].
   *
   * @throws IllegalStateException in perspective, which has one middle
   */
  public Camera part(int left, int top, int partWidth, int partHeight) {
    if (left == 0 && top == 0 && partWidth == width && partHeight == height) {
      return this;
    }
    if (!isFlat()) {
      throw new IllegalStateException("a view in perspective is drawn as a whole");
    }
    Point3 centre = target.plus(aside(left + partWidth / 2.0, top + partHeight / 2.0));
    return new Camera(angle, centre, pixelsPerMetre, partWidth, partHeight, depth);
  }

  /** The same view, its target elsewhere. */
  public Camera at(Point3 other) {
    return new Camera(angle, other, pixelsPerMetre, width, height, depth, eye);
  }

  /** The same target from another side. */
  public Camera from(ViewAngle other) {
    return new Camera(other, target, pixelsPerMetre, width, height, depth, eye);
  }

  /** The same view with another eye; infinite for a flat one [m]. */
  public Camera withEye(double other) {
    return new Camera(angle, target, pixelsPerMetre, width, height, depth, other);
  }

  /** The same view in another scale [pixels/m]. */
  public Camera withScale(double other) {
    return new Camera(angle, target, other, width, height, depth, eye);
  }

  /** The same view on a picture of another size. */
  public Camera sized(int otherWidth, int otherHeight) {
    return new Camera(angle, target, pixelsPerMetre, otherWidth, otherHeight, depth, eye);
  }

  /** The same view with each pixel divided into several, such as those of a finer screen. */
  public Camera finer(double factor) {
    return new Camera(
        angle,
        target,
        pixelsPerMetre * factor,
        (int) Math.max(1, Math.round(width * factor)),
        (int) Math.max(1, Math.round(height * factor)),
        depth,
        eye);
  }
}
