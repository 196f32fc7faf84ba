// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.hold.PadPressure.Grip;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PadPressureTest {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  /** 100 N over 20 mm by 10 mm: half a newton on each square millimetre. */
  @Test
  void pressure_isThePullOverLengthTimesThickness() {
    assertThat(PadPressure.of(100, 0.020, 0.010)).isCloseTo(0.5e6, within(1e-6));
    assertThat(PadPressure.lengthNeeded(100, 0.010, UNKNOWN)).isCloseTo(0.020, within(1e-12));
  }

  /**
   * Red alder, the softest of the table, is crushed across the grain at 1.72 MPa: bark is softer.
   */
  @Test
  void bark_isCrushedBeforeWood_butVerySoftWoodBefore() {
    assertThat(PadPressure.crushes(OptionalDouble.of(1.72e6))).isEqualTo(1e6);
    assertThat(PadPressure.bears(OptionalDouble.of(0.8e6))).isEqualTo(0.4e6);
  }

  /** A body slides on a slope steeper than its friction: 17 to 31 degrees for 0.3 to 0.6. */
  @ParameterizedTest
  @CsvSource({
    "0, STAYS",
    "16, STAYS",
    "18, MAY_SLIDE",
    "30, MAY_SLIDE",
    "32, SLIDES",
    "89, SLIDES"
  })
  void pad_slidesOnASlopeSteeperThanItsFriction(double degrees, Grip grip) {
    assertThat(PadPressure.grip(Math.toRadians(degrees))).isEqualTo(grip);
  }
}
