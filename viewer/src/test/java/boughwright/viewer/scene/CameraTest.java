// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import org.joml.Vector3f;
import org.junit.jupiter.api.Test;

class CameraTest {
  /** Single precision of positions in a picture of a thousand pixels. */
  private static final double PIXEL_ROUNDING = 1e-2;

  private static Camera camera(double azimuthDeg, double elevationDeg) {
    ViewAngle angle = new ViewAngle(Math.toRadians(azimuthDeg), Math.toRadians(elevationDeg));
    return new Camera(angle, new Point3(0, 0, 0.1), 1000, 800, 600, 2);
  }

  private static void assertPixel(Camera camera, Point3 point, double x, double y) {
    Camera.Pixel pixel = camera.project(point);
    assertThat(pixel.x()).isCloseTo(x, within(PIXEL_ROUNDING));
    assertThat(pixel.y()).isCloseTo(y, within(PIXEL_ROUNDING));
  }

  @Test
  void project_fromTheFront_putsRightRightAndUpUp() {
    assertPixel(camera(0, 0), new Point3(0, 0, 0.1), 400, 300);
    assertPixel(camera(0, 0), new Point3(0.1, 0.7, 0.1), 500, 300);
    assertPixel(camera(0, 0), new Point3(0, -0.3, 0.2), 400, 200);
  }

  /** Azimuth 90 is the viewer's left: from there the near side of the front lies to the right. */
  @Test
  void project_fromAzimuth90_seesTheFrontSideOnTheRight() {
    assertPixel(camera(90, 0), new Point3(0, -0.1, 0.1), 500, 300);
    assertPixel(camera(90, 0), new Point3(-0.5, 0, 0.1), 400, 300);
  }

  @Test
  void project_fromAbove_movesNearPointsDown() {
    assertPixel(camera(0, 30), new Point3(0, -0.1, 0.1), 400, 300 + 100 * 0.5);
    assertPixel(camera(0, 30), new Point3(0, 0, 0.2), 400, 300 - 100 * Math.cos(Math.PI / 6));
  }

  @Test
  void part_seesTheSamePointsAtTheSamePlaces() {
    Camera whole = camera(37, 12);
    Camera part = whole.part(130, 45, 310, 222);
    Point3 point = new Point3(0.03, -0.12, 0.19);
    Camera.Pixel inWhole = whole.project(point);
    assertPixel(part, point, inWhole.x() - 130, inWhole.y() - 45);
    assertThat(part.windowDepth(point)).isCloseTo(whole.windowDepth(point), within(1e-9));
  }

  @Test
  void windowDepth_agreesWithTheMatrix() {
    Camera camera = camera(200, -20);
    Vector3f clip = camera.viewProjection().transformPosition(0.1f, 0.2f, 0.3f, new Vector3f());
    assertThat(camera.windowDepth(new Point3(0.1, 0.2, 0.3)))
        .isCloseTo((clip.z + 1) / 2, within(1e-5));
  }
}
