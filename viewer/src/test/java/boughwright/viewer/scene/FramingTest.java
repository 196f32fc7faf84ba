// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FramingTest {
  private static final Framing.Margins MARGINS = new Framing.Margins(40, 30, 20, 90);
  private static final LiveTree HEDGE =
      new LiveTree(InventedTrees.hedgeDocument().tree(), Optional.empty());

  private static Camera camera(boolean flat) {
    Camera camera = new Camera(new ViewAngle(0.5, 0.3), new Point3(0.2, 0, 0), 300, 900, 700, 3);
    return flat ? camera : camera.withEye(Framing.eye(300, 700));
  }

  private static double[] seen(Camera camera, List<StagesView.Outline> limbs) {
    double[] box = {1e9, 1e9, -1e9, -1e9};
    for (StagesView.Outline limb : limbs) {
      for (int n = 0; n < limb.axis().size(); n++) {
        Camera.Pixel at = camera.project(limb.axis().get(n));
        double r = limb.radii().get(n) * camera.scaleAt(limb.axis().get(n));
        box[0] = Math.min(box[0], at.x() - r);
        box[1] = Math.min(box[1], at.y() - r);
        box[2] = Math.max(box[2], at.x() + r);
        box[3] = Math.max(box[3], at.y() + r);
      }
    }
    return box;
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void fit_fillsTheRoomBetweenTheMargins(boolean flat) {
    List<StagesView.Outline> limbs = HEDGE.capsules(HEDGE.measured()).frame();
    double[] box = seen(Framing.fit(camera(flat), limbs, MARGINS), limbs);
    double perspectiveShift = flat ? 1e-6 : 12;
    assertThat(box[0]).isGreaterThan(40 - perspectiveShift);
    assertThat(box[1]).isGreaterThan(30 - perspectiveShift);
    assertThat(box[2]).isLessThan(900 - 20 + perspectiveShift);
    assertThat(box[3]).isLessThan(700 - 90 + perspectiveShift);
    double filled = Math.max((box[2] - box[0]) / 840, (box[3] - box[1]) / 580);
    assertThat(filled).isCloseTo(1, within(0.03));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void zoomed_keepsWhatIsUnderTheMouse(boolean flat) {
    Camera camera = camera(flat);
    Point3 under = camera.beside(camera.target(), 200, 610);
    Camera closer = Framing.zoomed(camera, 1.7, 200, 610);
    Camera.Pixel still = closer.project(under);
    assertThat(still.distance(new Camera.Pixel(200, 610))).isLessThan(1e-6);
    assertThat(closer.pixelsPerMetre()).isCloseTo(510, within(1e-9));
  }

  @Test
  void moved_carriesThePictureAlong() {
    Camera camera = camera(true);
    Point3 point = new Point3(0.1, 0.2, 0.3);
    Camera.Pixel before = camera.project(point);
    Camera.Pixel after = Framing.moved(camera, 12, -7).project(point);
    assertThat(after.x() - before.x()).isCloseTo(12, within(1e-9));
    assertThat(after.y() - before.y()).isCloseTo(-7, within(1e-9));
  }

  /** From azimuth 350 to 10 it is 20 degrees, not 340. */
  @Test
  void between_takesTheShorterWayRound() {
    Camera from = camera(true).from(ViewAngle.level(Math.toRadians(350)));
    Camera to = camera(true).from(ViewAngle.level(Math.toRadians(10))).withScale(1200);
    Camera middle = Framing.between(from, to, 0.5);
    assertThat(Math.cos(middle.angle().azimuth())).isCloseTo(1, within(1e-12));
    assertThat(middle.pixelsPerMetre()).isCloseTo(600, within(1e-9));
    assertThat(Framing.between(from, to, 1)).isEqualTo(to);
  }
}
