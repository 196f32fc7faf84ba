// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.List;

/** Moves cameras about a scene. */
public final class Framing {
  /** The eye stands so far away that the picture's height is seen under 28 degrees. */
  private static final double EYE_OVER_HEIGHT = 0.5 / Math.tan(Math.toRadians(14));

  /** In perspective the size is found step by step; so many are plenty. */
  private static final int STEPS = 12;

  private Framing() {}

  /** Room to keep free at each side of a picture [pixels]. */
  public record Margins(double left, double top, double right, double bottom) {}

  /** How far the eye is from the target, in perspective, for a scale and a height [m]. */
  public static double eye(double pixelsPerMetre, double height) {
    return EYE_OVER_HEIGHT * height / pixelsPerMetre;
  }

  /**
   * The camera moved and scaled so that some limbs just fit into its picture.
   *
   * @param limbs at least one, with at least one place
   */
  public static Camera fit(Camera camera, List<StagesView.Outline> limbs, Margins margins) {
    double width = Math.max(1, camera.width() - margins.left() - margins.right());
    double height = Math.max(1, camera.height() - margins.top() - margins.bottom());
    Camera fitted = camera;
    for (int n = 0; n < (camera.isFlat() ? 2 : STEPS); n++) {
      Seen seen = seen(fitted, limbs);
      double factor = Math.min(width / seen.width(), height / seen.height());
      Point3 middle = fitted.beside(fitted.target(), seen.x(), seen.y());
      double scale = fitted.pixelsPerMetre() * factor;
      fitted = scaled(fitted.at(middle), scale);
    }
    double right = (margins.right() - margins.left()) / 2;
    double down = (margins.bottom() - margins.top()) / 2;
    return moved(fitted, -right, -down);
  }

  /** What limbs cover of a picture [pixels]. */
  private record Seen(double left, double right, double top, double bottom) {
    double width() {
      return Math.max(1e-6, right - left);
    }

    double height() {
      return Math.max(1e-6, bottom - top);
    }

    double x() {
      return (left + right) / 2;
    }

    double y() {
      return (top + bottom) / 2;
    }
  }

  private static Seen seen(Camera camera, List<StagesView.Outline> limbs) {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (StagesView.Outline limb : limbs) {
      for (int n = 0; n < limb.axis().size(); n++) {
        Camera.Pixel at = camera.project(limb.axis().get(n));
        double radius = limb.radii().get(n) * camera.scaleAt(limb.axis().get(n));
        left = Math.min(left, at.x() - radius);
        right = Math.max(right, at.x() + radius);
        top = Math.min(top, at.y() - radius);
        bottom = Math.max(bottom, at.y() + radius);
      }
    }
    return new Seen(left, right, top, bottom);
  }

  /** Another scale about the target, the eye as far as it belongs to that. */
  public static Camera scaled(Camera camera, double pixelsPerMetre) {
    Camera scaled = camera.withScale(pixelsPerMetre);
    return camera.isFlat() ? scaled : scaled.withEye(eye(pixelsPerMetre, camera.height()));
  }

  /** What is seen moves over the picture [pixels]. */
  public static Camera moved(Camera camera, double right, double down) {
    Vector3 aside =
        camera
            .angle()
            .right()
            .times(-right / camera.pixelsPerMetre())
            .plus(camera.angle().up().times(down / camera.pixelsPerMetre()));
    return camera.at(camera.target().plus(aside));
  }

  /** Larger by a factor; what lies under a pixel, as deep as the target, stays there. */
  public static Camera zoomed(Camera camera, double factor, double x, double y) {
    Point3 stays = camera.beside(camera.target(), x, y);
    return scaled(
        camera.at(stays.toward(camera.target(), 1 / factor)), camera.pixelsPerMetre() * factor);
  }

  /** Part of the way to another view of the same picture: 0 is the one, 1 the other. */
  public static Camera between(Camera one, Camera other, double part) {
    if (part >= 1) {
      return other;
    }
    double scale =
        one.pixelsPerMetre() * Math.pow(other.pixelsPerMetre() / one.pixelsPerMetre(), part);
    return scaled(
        other
            .from(one.angle().toward(other.angle(), part))
            .at(one.target().toward(other.target(), part)),
        scale);
  }
}
