// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
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

  private static Camera inPerspective(double azimuthDeg, double elevationDeg) {
    return camera(azimuthDeg, elevationDeg).withEye(1.5);
  }

  private static List<Camera> all() {
    return List.of(
        camera(0, 0),
        camera(37, 12),
        camera(200, -65),
        camera(90, 90),
        camera(10, -90),
        inPerspective(0, 0),
        inPerspective(37, 12),
        inPerspective(200, -65),
        inPerspective(90, 90));
  }

  private static List<Point3> points() {
    Random random = new Random(7);
    return Stream.generate(
            () ->
                new Point3(
                    random.nextDouble() - 0.5,
                    random.nextDouble() - 0.5,
                    0.6 * random.nextDouble()))
        .limit(50)
        .toList();
  }

  /** The matrices are put together by JOML; the pixels are worked out without them. */
  @Test
  void project_agreesWithTheMatrix_flatAndInPerspective() {
    for (Camera camera : all()) {
      for (Point3 point : points()) {
        Vector3f clip =
            camera
                .viewProjection()
                .transformProject(
                    new Vector3f((float) point.x(), (float) point.y(), (float) point.z()));
        assertPixel(camera, point, (clip.x + 1) / 2 * 800, (1 - clip.y) / 2 * 600);
        assertThat(camera.windowDepth(point)).isCloseTo((clip.z + 1) / 2, within(1e-4));
      }
    }
  }

  /** Similar triangles: 0.5 m before a target that is 1.5 m away, things are 1.5 times as large. */
  @Test
  void project_inPerspective_isLargerNearTheEye() {
    Camera camera = inPerspective(0, 0);
    assertPixel(camera, new Point3(0.1, 0, 0.1), 500, 300);
    assertPixel(camera, new Point3(0.1, -0.5, 0.1), 550, 300);
    assertThat(camera.scaleAt(new Point3(0, -0.5, 0.1))).isCloseTo(1500, within(1e-6));
  }

  @Test
  void project_fromStraightAbove_putsTheFrontAtTheFoot() {
    assertPixel(camera(0, 90), new Point3(0, -0.1, 0.4), 400, 400);
    assertPixel(camera(0, 90), new Point3(0.1, 0, 0.2), 500, 300);
  }

  @Test
  void sight_throughTheProjectedPoint_passesThroughThePoint() {
    for (Camera camera : all()) {
      for (Point3 point : points()) {
        Camera.Pixel pixel = camera.project(point);
        Camera.Sight sight = camera.sight(pixel.x(), pixel.y());
        double missed = point.minus(sight.from()).cross(sight.along().vector()).norm();
        assertThat(missed).isLessThan(1e-9);
        assertThat(point.minus(sight.from()).dot(sight.along().vector())).isPositive();
      }
    }
  }

  @Test
  void beside_isUnderThePixel_andAsDeepAsThePoint() {
    for (Camera camera : all()) {
      for (Point3 point : points()) {
        Point3 other = camera.beside(point, 123, 456);
        assertPixel(camera, other, 123, 456);
        assertThat(camera.windowDepth(other)).isCloseTo(camera.windowDepth(point), within(1e-9));
      }
    }
  }

  @Test
  void clipShift_pushesTheTargetBackByThatMuch() {
    for (Camera camera : List.of(camera(0, 0), inPerspective(0, 0))) {
      double step = 1e-4;
      Point3 back = camera.target().plus(camera.angle().toViewer().times(-step));
      double moved = 2 * (camera.windowDepth(back) - camera.windowDepth(camera.target()));
      assertThat(camera.clipShift(step)).isCloseTo(moved, within(1e-3 * moved));
    }
  }
}
