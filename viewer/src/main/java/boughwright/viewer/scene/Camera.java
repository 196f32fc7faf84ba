// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import org.joml.Matrix4f;
import org.joml.Vector3f;

/**
 * A view without perspective, so that lengths square to the line of sight are true to scale.
 *
 * @param angle from where
 * @param target the point at the middle of the picture [m, scene frame]
 * @param pixelsPerMetre scale
 * @param width width of the picture [pixels]
 * @param height height of the picture [pixels]
 * @param depth half the depth that is drawn, about the target [m]
 */
public record Camera(
    ViewAngle angle, Point3 target, double pixelsPerMetre, int width, int height, double depth) {

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

  public Camera {
    if (!(pixelsPerMetre > 0) || width < 1 || height < 1 || !(depth > 0)) {
      throw new IllegalArgumentException(
          "camera of " + width + " by " + height + " pixels, " + pixelsPerMetre + " per metre");
    }
  }

  /** Where a point appears. */
  public Pixel project(Point3 point) {
    Vector3f clip =
        viewProjection()
            .transformPosition(
                (float) point.x(), (float) point.y(), (float) point.z(), new Vector3f());
    return new Pixel((clip.x + 1) / 2 * width, (1 - clip.y) / 2 * height);
  }

  /** How deep a point lies in what is drawn: 0 at the near end, 1 at the far end [1]. */
  public double windowDepth(Point3 point) {
    Vector3 fromTarget = point.minus(target);
    return 0.5 - fromTarget.dot(angle.toViewer().vector()) / (2 * depth);
  }

  /** Scene frame to the view: x right, y up, z toward the viewer [m]. */
  public Matrix4f view() {
    Vector3 toViewer = angle.toViewer().vector();
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
    float halfWidth = (float) (width / 2.0 / pixelsPerMetre);
    float halfHeight = (float) (height / 2.0 / pixelsPerMetre);
    float near = (float) (1 - depth);
    float far = (float) (1 + depth);
    return new Matrix4f()
        .setOrtho(-halfWidth, halfWidth, -halfHeight, halfHeight, near, far)
        .mul(view());
  }

  /** The camera of a part of this picture, given by its left upper corner and size [pixels]. */
  public Camera part(int left, int top, int partWidth, int partHeight) {
    double right = (left + partWidth / 2.0 - width / 2.0) / pixelsPerMetre;
    double up = (height / 2.0 - top - partHeight / 2.0) / pixelsPerMetre;
    Point3 centre = target.plus(angle.right().times(right)).plus(angle.up().times(up));
    return new Camera(angle, centre, pixelsPerMetre, partWidth, partHeight, depth);
  }
}
