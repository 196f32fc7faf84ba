// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against the two lines of the Wood Handbook, Table 5-16, put into degrees Celsius by hand. */
class WarmDayTest {
  /** The coefficients are printed to four digits; the two lines part by so much at 0 °C [1]. */
  private static final double PRINTED = 5e-4;

  @Test
  void greenWood_isAsInTheTables_at23Degrees() {
    assertThat(WarmDay.stiffness(23)).isCloseTo(1, within(2e-3));
  }

  /** 0.1793 percent per °F is 0.32274 per °C; 13.12 - 0.1793 * 32 = 7.3824 percent at 0 °C. */
  @Test
  void greenWood_softensInTheWarmth() {
    assertThat(WarmDay.stiffness(35)).isCloseTo(1 + (7.3824 - 35 * 0.32274) / 100, within(1e-9));
    assertThat(WarmDay.stiffness(0)).isCloseTo(1.073824, within(1e-9));
  }

  /** 22.04 - 0.4578 * 32 = 7.3904 percent at 0 °C, and 0.82404 more for each degree below. */
  @Test
  void frozenWood_isMuchStiffer_andTheTwoLinesMeet() {
    assertThat(WarmDay.stiffness(-10)).isCloseTo(1 + (7.3904 + 8.2404) / 100, within(1e-9));
    assertThat(WarmDay.stiffness(-1e-9)).isCloseTo(WarmDay.stiffness(0), within(PRINTED));
    assertThat(WarmDay.isTooCold(0)).isTrue();
    assertThat(WarmDay.isTooCold(12)).isFalse();
  }

  @Test
  void temperatureNobodyBendsAt_isRefused() {
    assertThatThrownBy(() -> WarmDay.stiffness(90)).isInstanceOf(IllegalArgumentException.class);
  }
}
