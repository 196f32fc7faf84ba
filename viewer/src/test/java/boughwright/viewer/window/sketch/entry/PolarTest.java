// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import org.junit.jupiter.api.Test;

class PolarTest {
  /** The example of design and tape sheet: 86.6 mm to the viewer's left and 50 mm up. */
  @Test
  void from_leadsToTheViewersLeft_atAzimuth90() {
    Point3 end =
        new Polar(Math.toRadians(90), Math.toRadians(30), 0.1).from(new Point3(0, 0, 0.035));

    assertThat(end.x()).isCloseTo(-0.0866025, within(1e-6));
    assertThat(end.y()).isCloseTo(0, within(1e-6));
    assertThat(end.z()).isCloseTo(0.085, within(1e-6));
  }

  @Test
  void between_givesBackWhatWasTyped_onAllSides() {
    for (int azimuth = 0; azimuth < 360; azimuth += 15) {
      for (int elevation = -75; elevation <= 75; elevation += 25) {
        Polar typed = new Polar(Math.toRadians(azimuth), Math.toRadians(elevation), 0.2);

        Polar read = Polar.between(Point3.ORIGIN, typed.from(Point3.ORIGIN));

        assertThat(Math.toDegrees(read.azimuth())).isCloseTo(azimuth, within(0.005));
        assertThat(Math.toDegrees(read.elevation())).isCloseTo(elevation, within(0.005));
        assertThat(read.length()).isCloseTo(0.2, within(2e-6));
      }
    }
  }

  @Test
  void between_countsAzimuthAsZero_whereApieceStandsPlumb() {
    assertThat(Polar.between(Point3.ORIGIN, new Point3(0, 0, 1)).azimuth()).isZero();
  }
}
