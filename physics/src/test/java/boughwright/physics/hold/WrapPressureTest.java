// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WrapPressureTest {
  /**
   * Half a ring of band 1 m wide is held by two cut ends: what presses on it across the middle, p
   * times 2 r, is twice the pull in the band per width, summed here over the half circle.
   */
  @Test
  void pressure_balancesThePullOfHalfARing() {
    double radius = 0.008;
    double pressure = WrapPressure.on(radius);
    double upward = 0;
    int steps = 10_000;
    for (int k = 0; k < steps; k++) {
      double angle = Math.PI * (k + 0.5) / steps;
      upward += pressure * Math.sin(angle) * radius * Math.PI / steps;
    }
    // two bands of 8 mm over each other, each wound on with 20 N of which half is left
    double perWidth = 2 * 10 / 0.008;
    assertThat(upward).isCloseTo(2 * perWidth, within(1e-6 * perWidth));
  }
}
