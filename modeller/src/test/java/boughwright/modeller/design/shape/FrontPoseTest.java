// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Standing;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FrontPoseTest {
  private static final double ROUNDING = 1e-12;

  private static void requireSame(Direction3 found, Direction3 asked) {
    assertThat(found.vector().minus(asked.vector()).norm()).isLessThan(1e-9);
  }

  @Test
  void front_facesTheViewer_fromEveryAzimuth() {
    for (int degrees = 0; degrees < 360; degrees += 15) {
      double azimuth = Math.toRadians(degrees);
      Rotation toViewer = FrontPose.upright(azimuth).toViewer();
      requireSame(toViewer.turn(Direction3.ofAzimuth(azimuth)), new Direction3(0, -1, 0));
      requireSame(toViewer.turn(Direction3.UP), Direction3.UP);
    }
  }

  @Test
  void tiltToTheRight_movesTheTopToTheViewersRight() {
    Direction3 up = new FrontPose(2.2, 0.3, 0).toViewer().turn(Direction3.UP);
    requireSame(up, new Direction3(Math.sin(0.3), 0, Math.cos(0.3)));
  }

  @Test
  void tiltToward_movesTheTopTowardTheViewer() {
    Direction3 up = new FrontPose(-1.1, 0, 0.3).toViewer().turn(Direction3.UP);
    requireSame(up, new Direction3(0, -Math.sin(0.3), Math.cos(0.3)));
  }

  @Test
  void plantingOfAPlan_comesBackAsItWas() {
    Random random = new Random(4);
    for (int n = 0; n < 200; n++) {
      double azimuth = random.nextDouble() * 7 - 3;
      Planting planting = new Planting(random.nextDouble() * 1.5, random.nextDouble() * 7 - 3);
      FrontPose pose = FrontPose.of(azimuth, planting);
      assertThat(pose.tilt()).isCloseTo(planting.tilt(), within(ROUNDING));
      requireSame(
          Standing.turn(pose.planting()).turn(Direction3.UP),
          Standing.turn(planting).turn(Direction3.UP));
    }
  }
}
